package curbwatt.engine.study.recharge;

import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.protection.Reason;
import curbwatt.engine.result.PhaseSummary;
import curbwatt.engine.result.RunResult;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What a way of recharging gives back.
 *
 * @param way the way
 * @param missing what each battery lacked when it began
 * @param points the charge along it, up to where the voltage collapsed if it did: what charges a battery whose loads are
 *     gone is no answer
 * @param meanLoadA mean current of all loads (A)
 * @param capacityA what the hot alternator can give (A); empty: the engine did not run
 * @param started whether the engine ran
 * @param packRefuses whether the protection inside a pack refused charge to the end
 */
public record WayBack(
        Way way,
        List<Missing> missing,
        List<ChargePoint> points,
        double meanLoadA,
        OptionalDouble capacityA,
        boolean started,
        boolean packRefuses) {

    /** An alternator that gives this share of what it can gives all it can. */
    private static final double AT_ITS_LIMIT_FRACTION = 0.98;

    private static final int HALVINGS = 30;

    private static final double SAME_FRACTION = 0.01;

    private static final double NOTHING_AH = 0.05;

    /** Copies the lists. */
    public WayBack {
        Objects.requireNonNull(way, "way");
        missing = List.copyOf(missing);
        points = List.copyOf(points);
        Objects.requireNonNull(capacityA, "capacityA");
    }

    static WayBack of(Way way, List<Missing> missing, ChargeRecorder recorder, RunResult run) {
        PhaseSummary last = run.phases().get(run.phases().size() - 1);
        double fromS = last.startS();
        return new WayBack(
                way,
                missing,
                recorder.points(missing, firstS(run, fromS, EventKind.VOLTAGE_COLLAPSED) - fromS),
                last.meanLoadA(),
                last.alternatorCapacityA(),
                last.engineRan() && Double.isInfinite(firstS(run, fromS, EventKind.ENGINE_DID_NOT_START)),
                packRefuses(run));
    }

    /** Whether more reasons to stop charging were found than let go again. */
    private static boolean packRefuses(RunResult run) {
        List<String> reasons = Stream.of(Reason.values())
                .filter(Reason::stopsCharging)
                .map(reason -> ": " + reason.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .toList();
        List<EventKind> kinds = run.events().stream()
                .filter(event -> reasons.stream().anyMatch(event.subject()::endsWith))
                .map(Event::kind)
                .toList();
        return Collections.frequency(kinds, EventKind.PACK_STOPPED)
                > Collections.frequency(kinds, EventKind.PACK_RELEASED);
    }

    private static double firstS(RunResult run, double fromS, EventKind kind) {
        return run.events().stream()
                .filter(event -> event.kind() == kind && event.timeS() >= fromS)
                .mapToDouble(Event::timeS)
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** What was missing (Ah). */
    public double missingAh() {
        return missing.stream().mapToDouble(Missing::ah).sum();
    }

    /** Whether nothing worth a drive was missing: less than {@link #NOTHING_AH}. */
    public boolean isNothing() {
        return missingAh() < NOTHING_AH;
    }

    /** When a share of the missing charge is back for the first time (s); empty: not within a day. */
    public OptionalDouble timeS(double shareFraction) {
        double wishedAh = (1 - shareFraction) * missingAh();
        for (int i = 0; i < points.size(); i++) {
            if (points.get(i).lackingAh(missing) <= wishedAh) {
                return OptionalDouble.of(i == 0 ? 0 : crossingS(points.get(i - 1), points.get(i), wishedAh));
            }
        }
        return OptionalDouble.empty();
    }

    /** Charges run straight between two points; what is lacking has a corner where one of two batteries is done. */
    private double crossingS(ChargePoint before, ChargePoint after, double wishedAh) {
        double fromFraction = 0;
        double toFraction = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middleFraction = 0.5 * (fromFraction + toFraction);
            if (before.towards(after, middleFraction).lackingAh(missing) <= wishedAh) {
                toFraction = middleFraction;
            } else {
                fromFraction = middleFraction;
            }
        }
        return before.towards(after, toFraction).timeS();
    }

    /**
     * Whether another way gives the charge back as fast, to a hundredth, or as little for the same reason: the battery sets
     * the pace of both.
     */
    public boolean isAsFastAs(WayBack other) {
        boolean alike = limit().equals(other.limit())
                && (limit().isEmpty() || Math.abs(mostFraction() - other.mostFraction()) <= SAME_FRACTION);
        boolean inStep = Stream.of(0.8, 0.9, 1.0).allMatch(share -> isSame(timeS(share), other.timeS(share)));
        return isNothing() || (alike && inStep);
    }

    private static boolean isSame(OptionalDouble oneS, OptionalDouble otherS) {
        if (oneS.isEmpty() || otherS.isEmpty()) {
            return oneS.equals(otherS);
        }
        return Math.abs(oneS.getAsDouble() - otherS.getAsDouble()) <= SAME_FRACTION * oneS.getAsDouble();
    }

    /** When all is back (s); empty: not within a day. */
    public OptionalDouble backS() {
        return timeS(1);
    }

    /** Largest share of the missing charge that ever was back; below 0: the batteries only lost more. */
    public double mostFraction() {
        return shareFraction(points.stream()
                .skip(1)
                .mapToDouble(point -> point.lackingAh(missing))
                .min()
                .orElse(missingAh()));
    }

    /** Share of the missing charge that is back at a point. */
    public double shareFraction(ChargePoint point) {
        return shareFraction(point.lackingAh(missing));
    }

    private double shareFraction(double lackingAh) {
        return missingAh() > 0 ? 1 - lackingAh / missingAh() : 1;
    }

    /** Why not all of it comes back; empty: it does. */
    public Optional<Limit> limit() {
        if (backS().isPresent()) {
            return Optional.empty();
        }
        if (!started) {
            return Optional.of(Limit.DOES_NOT_START);
        }
        if (packRefuses) {
            return Optional.of(Limit.PACK_REFUSES);
        }
        double lastA = points.get(points.size() - 1).alternatorA();
        return Optional.of(lastA >= AT_ITS_LIMIT_FRACTION * capacityA.orElse(0) ? Limit.ALTERNATOR : Limit.ACCEPTANCE);
    }
}
