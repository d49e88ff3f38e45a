package curbwatt.charts.report;

import curbwatt.charts.figure.CurvesFigure.Content;
import curbwatt.charts.figure.CurvesFigure.Curve;
import curbwatt.charts.figure.CurvesFigure.Mark;
import curbwatt.charts.figure.CurvesFigure.Point;
import curbwatt.charts.run.IdleStory;
import curbwatt.charts.wording.IdleText;
import curbwatt.charts.wording.IdleWords;
import curbwatt.engine.study.idle.IdleCase;
import curbwatt.engine.study.idle.IdleWay;
import curbwatt.engine.study.idle.Lever;
import curbwatt.engine.study.idle.Measure;
import curbwatt.engine.study.idle.Tried;
import curbwatt.engine.study.idle.WayOutcome;
import curbwatt.engine.study.idle.money.Offer;
import curbwatt.engine.study.idle.money.Prices;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the study's curves are made of.
 *
 * @param story the study and its runs
 */
record IdleCurves(IdleStory story) {

    private static final double S_PER_H = 3600;
    private static final int PRICES = 60;
    private static final double DEAREST_FACTOR = 2.5;
    private static final double MOST_SCENES_FACTOR = 3;
    private static final double HEADROOM_FACTOR = 1.08;

    /** Fuel, or engine hours, of one scene over the time of standing. */
    Content hours() {
        boolean fuel = base().measure() != Measure.ENGINE_HOURS;
        double standingH = new IdleText(story).standingS() / S_PER_H;
        List<Tried> tried = story.result().tried(Lever.SCENE_HOURS);
        List<Curve> curves = Arrays.stream(IdleWay.values())
                .map(way -> new Curve(
                        IdleWords.name(way),
                        place(way),
                        tried.stream()
                                .map(one -> point(one, way, standingH, fuel))
                                .toList()))
                .toList();
        double most = curves.stream()
                .flatMap(curve -> curve.points().stream())
                .mapToDouble(point -> point.upright().doubleValue())
                .max()
                .orElse(1);
        double least = curves.stream()
                .flatMap(curve -> curve.points().stream())
                .mapToDouble(point -> point.upright().doubleValue())
                .min()
                .orElse(0);
        return new Content(
                "hours",
                "Time of standing, h",
                fuel ? "Fuel of one scene, L" : "Engine hours of one scene, h",
                List.of(0.0, HEADROOM_FACTOR * tried.get(tried.size() - 1).factor() * standingH),
                List.of(Math.min(0, HEADROOM_FACTOR * least), Math.max(0.1, HEADROOM_FACTOR * most)),
                curves,
                Optional.of(new Point(standingH, 0, Mark.NONE)));
    }

    private static Point point(Tried tried, IdleWay way, double standingH, boolean fuel) {
        WayOutcome outcome = tried.outcome().of(way);
        double amount = fuel
                ? outcome.usage().fuelLitres().orElseThrow()
                : outcome.usage().engineH();
        return new Point(tried.factor() * standingH, amount, outcome.serves() ? Mark.DOT : Mark.CROSS);
    }

    /** Scenes a year from which on a device pays, over the price of fuel; empty: there are no prices, or it never does. */
    Optional<Content> breakEven() {
        if (base().measure() != Measure.MONEY) {
            return Optional.empty();
        }
        Prices prices = base().plan().prices().orElseThrow();
        double scenes = base().plan().scenesPerYear();
        List<Curve> curves = Arrays.stream(IdleWay.values())
                .filter(IdleCase::needsDevice)
                .map(way -> new Curve(IdleWords.name(way), place(way), breakEven(way, prices, scenes)))
                .filter(curve -> curve.points().size() > 1)
                .toList();
        if (curves.isEmpty()) {
            return Optional.empty();
        }
        String money = prices.currency().isEmpty() ? "money" : prices.currency();
        return Optional.of(new Content(
                "break-even",
                "Price of fuel, " + money + " per litre",
                "Scenes a year",
                List.of(0.0, DEAREST_FACTOR * prices.fuelMoneyPerLitre()),
                List.of(0.0, MOST_SCENES_FACTOR * scenes),
                curves,
                Optional.of(new Point(prices.fuelMoneyPerLitre(), scenes, Mark.DOT))));
    }

    private List<Point> breakEven(IdleWay way, Prices prices, double scenes) {
        Offer device = base().offer(base().of(way));
        Offer without = base().offer(base().withoutDevice());
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= PRICES; i++) {
            double fuel = DEAREST_FACTOR * prices.fuelMoneyPerLitre() * i / PRICES;
            OptionalDouble even = pays(device, without, prices.withFuel(fuel));
            if (even.isPresent() && even.getAsDouble() < 2 * MOST_SCENES_FACTOR * scenes) {
                points.add(new Point(fuel, even.getAsDouble(), Mark.NONE));
            }
        }
        return points;
    }

    /** Scenes a year from which on a device pays; empty: it never does, or always. */
    static OptionalDouble pays(Offer device, Offer without, Prices prices) {
        boolean saves = prices.sceneMoney(device.usage()) < prices.sceneMoney(without.usage());
        return saves ? device.evenScenesPerYear(without, prices) : OptionalDouble.empty();
    }

    private static int place(IdleWay way) {
        return List.of(IdleWay.values()).indexOf(way);
    }

    private IdleCase base() {
        return story.result().base();
    }
}
