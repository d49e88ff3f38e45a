package curbwatt.charts.report;

import curbwatt.charts.run.IdleStory;
import curbwatt.charts.wording.IdleText;
import curbwatt.charts.wording.IdleWords;
import curbwatt.charts.wording.PlainText;
import curbwatt.charts.wording.WayText;
import curbwatt.engine.study.Answer;
import curbwatt.engine.study.idle.IdleCase;
import curbwatt.engine.study.idle.IdlePlan;
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
 * The study's figures as tables.
 *
 * @param story the study and its runs
 */
record IdleTables(IdleStory story) {

    private static final List<Double> FUEL_FACTORS = List.of(0.5, 0.75, 1.0, 1.25, 1.5, 2.0);

    /** All tables, in the order of the page. */
    List<Table> all() {
        List<Table> tables = new ArrayList<>();
        tables.add(ways());
        tables.add(year());
        if (base().measure() == Measure.MONEY) {
            tables.add(devices());
            tables.add(fuelPrice());
        }
        tables.add(tried("hours", Lever.SCENE_HOURS, "What is to be held is held as much longer or shorter."));
        if (!story.result().tried(Lever.ALTERNATOR_IDLE).isEmpty()) {
            tables.add(tried(
                    "alternator",
                    Lever.ALTERNATOR_IDLE,
                    "The label's output at high speed stays; that at low speed is multiplied."));
        }
        return tables;
    }

    private Table ways() {
        List<List<String>> lines = new ArrayList<>();
        for (WayOutcome outcome : base().outcomes()) {
            Answer answer = outcome.answer();
            lines.add(List.of(
                    IdleWords.name(outcome.way()),
                    WayText.found(outcome),
                    answer.heldS().isPresent() ? PlainText.time(answer.heldS().getAsDouble()) : "—",
                    answer.firstTripS().isPresent()
                            ? PlainText.time(answer.firstTripS().getAsDouble())
                            : "never",
                    PlainText.percent(answer.result().endChargeFraction()),
                    margin(answer),
                    PlainText.number(outcome.usage().engineH(), 2),
                    Integer.toString(outcome.usage().starts()),
                    number(outcome.usage().fuelLitres(), 2),
                    number(outcome.carbonKg(), 1)));
        }
        return marked(Table.of(
                "ways",
                "One scene in four ways",
                "Engine hours, fuel and CO2 are those of standing; fuel counts the electricity of the drives, and what"
                        + " brings the battery back to where it began.",
                List.of(
                        "Way",
                        "What is asked",
                        "#Held",
                        "#First trip",
                        "#Charge at the end",
                        "#Restart margin",
                        "#Engine hours",
                        "#Starts",
                        "#Fuel, L",
                        "#CO2, kg"),
                lines));
    }

    private Table year() {
        double scenes = base().plan().scenesPerYear();
        boolean money = base().measure() == Measure.MONEY;
        List<String> heads = new ArrayList<>(List.of("Way", "#Engine hours", "#Starts", "#Fuel, L", "#CO2, kg"));
        if (money) {
            heads.addAll(List.of("#Running", "#Device", "#Together"));
        }
        List<List<String>> lines = new ArrayList<>();
        for (WayOutcome outcome : base().outcomes()) {
            List<String> line = new ArrayList<>(List.of(
                    IdleWords.name(outcome.way()),
                    PlainText.number(scenes * outcome.usage().engineH(), 0),
                    PlainText.number(scenes * outcome.usage().starts(), 0),
                    number(times(outcome.usage().fuelLitres(), scenes), 0),
                    number(times(outcome.carbonKg(), scenes), 0)));
            if (money) {
                Offer offer = base().offer(outcome);
                double running = scenes * prices().sceneMoney(offer.usage());
                line.add(text().money(running, 0));
                line.add(text().money(offer.deviceMoney() / prices().deviceYears(), 0));
                line.add(text().money(offer.yearMoney(prices(), scenes), 0));
            }
            lines.add(line);
        }
        return marked(Table.of(
                "year",
                "A year of " + PlainText.number(scenes, 0) + " such scenes",
                money ? "Running is fuel, wear by the hour and wear by the start." : "",
                heads,
                lines));
    }

    private Table devices() {
        double scenes = base().plan().scenesPerYear();
        WayOutcome without = base().withoutDevice();
        List<List<String>> lines = new ArrayList<>();
        for (WayOutcome outcome : base().outcomes()) {
            if (IdleCase.needsDevice(outcome.way())) {
                Offer device = base().offer(outcome);
                Offer plain = base().offer(without);
                OptionalDouble pays = IdleCurves.pays(device, plain, prices());
                OptionalDouble worth = device.evenDeviceMoney(plain, prices(), scenes);
                lines.add(List.of(
                        IdleWords.name(outcome.way()),
                        WayText.found(outcome),
                        text().money(device.deviceMoney(), 0),
                        pays.isPresent() ? PlainText.number(pays.getAsDouble(), 0) : noBreakEven(device, plain),
                        worth.isPresent() ? text().money(worth.getAsDouble(), 0) : "nothing"));
            }
        }
        return Table.of(
                "devices",
                "When a device pays",
                "Against " + IdleWords.name(without.way()).toLowerCase(java.util.Locale.ROOT)
                        + (without.serves()
                                ? "."
                                : ", which does not hold what is asked: money is then not the point."),
                List.of("Device", "What is asked", "#Price", "#Pays from scenes a year", "#Worth at most"),
                lines);
    }

    private String noBreakEven(Offer device, Offer plain) {
        return prices().sceneMoney(device.usage()) < prices().sceneMoney(plain.usage()) ? "1" : "never";
    }

    private Table fuelPrice() {
        List<List<String>> lines = new ArrayList<>();
        for (double factor : FUEL_FACTORS) {
            IdlePlan plan = new IdlePlan(
                    base().plan().scenesPerYear(),
                    base().plan().engineStages(),
                    Optional.of(prices().withFuel(factor * prices().fuelMoneyPerLitre())));
            lines.add(line(text().amount(Lever.FUEL_PRICE, factor), base().by(plan)));
        }
        return Table.of("fuel-price", IdleWords.name(Lever.FUEL_PRICE), lead(""), heads(Lever.FUEL_PRICE), lines)
                .marking(FUEL_FACTORS.indexOf(1.0));
    }

    private Table tried(String id, Lever lever, String lead) {
        List<Tried> tried = story.result().tried(lever);
        List<List<String>> lines = tried.stream()
                .map(one -> line(text().amount(lever, one.factor()), one.outcome()))
                .toList();
        int today = tried.stream().map(Tried::factor).toList().indexOf(1.0);
        return Table.of(id, IdleWords.name(lever), lead(lead), heads(lever), lines)
                .marking(today);
    }

    private String lead(String first) {
        String unit = switch (base().measure()) {
            case MONEY -> "Money in a year";
            case FUEL -> "Litres of fuel in a scene";
            case ENGINE_HOURS -> "Engine hours in a scene";
        };
        return (first + " " + unit
                        + "; a way that does not hold what is asked stands in brackets. The marked row is today.")
                .strip();
    }

    private static List<String> heads(Lever lever) {
        List<String> heads = new ArrayList<>(List.of(IdleWords.name(lever), "Best"));
        Arrays.stream(IdleWay.values()).forEach(way -> heads.add("#" + IdleWords.name(way)));
        return heads;
    }

    private List<String> line(String name, IdleCase at) {
        List<String> line =
                new ArrayList<>(List.of(name, at.bestWay().map(IdleWords::name).orElse("none")));
        int decimals = at.measure() == Measure.MONEY ? 0 : 2;
        for (WayOutcome outcome : at.outcomes()) {
            String cost = PlainText.number(at.cost(outcome), decimals);
            line.add(outcome.serves() ? cost : "(" + cost + ")");
        }
        return line;
    }

    private Table marked(Table table) {
        return base().bestWay()
                .map(best -> table.marking(List.of(IdleWay.values()).indexOf(best)))
                .orElse(table);
    }

    private static String margin(Answer answer) {
        double marginV = answer.restartMarginV();
        return Double.isFinite(marginV) ? PlainText.volts(marginV) : "none";
    }

    private static OptionalDouble times(OptionalDouble amount, double factor) {
        return amount.isPresent() ? OptionalDouble.of(factor * amount.getAsDouble()) : amount;
    }

    private static String number(OptionalDouble amount, int decimals) {
        return amount.isPresent() ? PlainText.number(amount.getAsDouble(), decimals) : "—";
    }

    private IdleText text() {
        return new IdleText(story);
    }

    private IdleCase base() {
        return story.result().base();
    }

    private Prices prices() {
        return base().plan().prices().orElseThrow();
    }
}
