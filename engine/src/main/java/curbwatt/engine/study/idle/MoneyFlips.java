package curbwatt.engine.study.idle;

import curbwatt.engine.study.idle.money.Offer;
import curbwatt.engine.study.idle.money.Prices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Where prices and the number of scenes change the answer. All costs run straight in each of them, so the nearest value
 * at which another way costs as much as the best is where the answer changes.
 *
 * @param base the ways at the present prices
 */
record MoneyFlips(IdleCase base) {

    /** The nearest changes below and above the present values. */
    List<Flip> all() {
        if (base.measure() != Measure.MONEY || base.best().isEmpty()) {
            return List.of();
        }
        WayOutcome best = base.best().get();
        Prices prices = base.plan().prices().orElseThrow();
        double scenes = base.plan().scenesPerYear();
        List<Flip> flips = new ArrayList<>();
        Offer ours = base.offer(best);
        flips.addAll(nearest(
                best,
                Lever.FUEL_PRICE,
                prices.fuelMoneyPerLitre(),
                rival -> ours.evenFuelPrice(base.offer(rival), prices, scenes)));
        flips.addAll(nearest(
                best, Lever.SCENES_PER_YEAR, scenes, rival -> ours.evenScenesPerYear(base.offer(rival), prices)));
        flips.addAll(device(best, IdleWay.HIGH_IDLE, Lever.IDLE_CONTROL_PRICE, prices.idleControlMoney()));
        flips.addAll(device(best, IdleWay.AUTOMATIC_START, Lever.AUTOMATIC_START_PRICE, prices.automaticStartMoney()));
        return List.copyOf(flips);
    }

    /** A device's price matters to the best way if that has the device, and to a rival that has it. */
    private List<Flip> device(WayOutcome best, IdleWay way, Lever lever, double priceMoney) {
        Prices prices = base.plan().prices().orElseThrow();
        double scenes = base.plan().scenesPerYear();
        if (best.way() == way) {
            return nearest(
                    best,
                    lever,
                    priceMoney,
                    rival -> base.offer(best).evenDeviceMoney(base.offer(rival), prices, scenes));
        }
        WayOutcome device = base.of(way);
        if (!device.serves() || priceMoney <= 0) {
            return List.of();
        }
        OptionalDouble even = base.offer(device).evenDeviceMoney(base.offer(best), prices, scenes);
        return even.isPresent() && even.getAsDouble() < priceMoney
                ? List.of(new Flip(lever, even.getAsDouble() / priceMoney, Optional.of(way)))
                : List.of();
    }

    private List<Flip> nearest(
            WayOutcome best, Lever lever, double present, Function<WayOutcome, OptionalDouble> evenWith) {
        if (present <= 0) {
            return List.of();
        }
        List<Flip> all = base.outcomes().stream()
                .filter(rival -> rival.way() != best.way() && rival.serves())
                .flatMap(rival -> evenWith.apply(rival).stream()
                        .mapToObj(even -> new Flip(lever, even / present, Optional.of(rival.way()))))
                .toList();
        List<Flip> near = new ArrayList<>();
        all.stream()
                .filter(flip -> flip.factor() < 1)
                .max(Comparator.comparingDouble(Flip::factor))
                .ifPresent(near::add);
        all.stream()
                .filter(flip -> flip.factor() > 1)
                .min(Comparator.comparingDouble(Flip::factor))
                .ifPresent(near::add);
        return near;
    }
}
