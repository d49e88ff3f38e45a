package curbwatt.engine.study.idle;

import curbwatt.engine.study.idle.money.Offer;
import curbwatt.engine.study.idle.money.Prices;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * All ways side by side, under one set of conditions.
 *
 * @param plan what they are compared by
 * @param outcomes one for each way, in the order of {@link IdleWay}
 */
public record IdleCase(IdlePlan plan, List<WayOutcome> outcomes) {

    /**
     * Costs nearer than this are equal: an automatic start that never has to act costs what none costs, and is followed
     * edge by edge where the others go in long steps, which agree to some 1e-6.
     */
    private static final double SAME_FRACTION = 1e-5;

    /** Copies the list. */
    public IdleCase {
        outcomes = List.copyOf(outcomes);
    }

    /** One of the ways. */
    public WayOutcome of(IdleWay way) {
        return outcomes.stream()
                .filter(outcome -> outcome.way() == way)
                .findFirst()
                .orElseThrow();
    }

    /** The way that serves and costs least; of equals, one without a device. Empty: none serves. */
    public Optional<WayOutcome> best() {
        double least = outcomes.stream()
                .filter(WayOutcome::serves)
                .mapToDouble(this::cost)
                .min()
                .orElse(0);
        return outcomes.stream()
                .filter(WayOutcome::serves)
                .filter(outcome -> cost(outcome) <= least + SAME_FRACTION * Math.abs(least))
                .min(Comparator.comparing(outcome -> needsDevice(outcome.way())));
    }

    /** The best way by name; empty: none serves. */
    public Optional<IdleWay> bestWay() {
        return best().map(WayOutcome::way);
    }

    /** What device prices are held against: the way that costs least without a device and serves, else idling. */
    public WayOutcome withoutDevice() {
        return outcomes.stream()
                .filter(outcome -> !needsDevice(outcome.way()) && outcome.serves())
                .min(Comparator.comparingDouble(this::cost))
                .orElse(of(IdleWay.IDLING));
    }

    /** By what the ways are told apart. */
    public Measure measure() {
        if (of(IdleWay.IDLING).usage().fuelLitres().isEmpty()) {
            return Measure.ENGINE_HOURS;
        }
        return plan.prices().isPresent() ? Measure.MONEY : Measure.FUEL;
    }

    /** What a way costs, in the unit of the measure: money in a year, litres or hours in a scene. */
    public double cost(WayOutcome outcome) {
        return switch (measure()) {
            case MONEY -> offer(outcome).yearMoney(prices(), plan.scenesPerYear());
            case FUEL -> outcome.usage().fuelLitres().orElseThrow();
            case ENGINE_HOURS -> outcome.usage().engineH();
        };
    }

    /** A way as an offer; only where there are prices. */
    public Offer offer(WayOutcome outcome) {
        double deviceMoney = switch (outcome.way()) {
            case HIGH_IDLE -> prices().idleControlMoney();
            case AUTOMATIC_START -> prices().automaticStartMoney();
            case IDLING, ENGINE_OFF -> 0;
        };
        return new Offer(outcome.usage(), deviceMoney);
    }

    /** The same runs by another plan. */
    public IdleCase by(IdlePlan other) {
        return new IdleCase(other, outcomes);
    }

    /** Whether a way needs something bought. */
    public static boolean needsDevice(IdleWay way) {
        return way == IdleWay.HIGH_IDLE || way == IdleWay.AUTOMATIC_START;
    }

    private Prices prices() {
        return plan.prices().orElseThrow(() -> new IllegalStateException("there are no prices"));
    }
}
