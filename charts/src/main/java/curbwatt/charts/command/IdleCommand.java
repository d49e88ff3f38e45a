package curbwatt.charts.command;

import curbwatt.charts.report.IdleReport;
import curbwatt.charts.run.IdleStory;
import curbwatt.engine.study.idle.IdlePlan;
import curbwatt.engine.study.idle.IdleStudy;
import curbwatt.engine.study.idle.money.Prices;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Compares the ways in which a vehicle can stand. */
@Command(
        name = "idle",
        header =
                "Should the engine idle? With a control, with an automatic start, or be off: what each takes in a year.",
        description = {
            "Runs the scene in four ways: idling, idling with an idle control, off with an automatic start, and off. Of those"
                    + " that hold what is asked it recommends the one that takes least, and says when the answer changes: with"
                    + " the time of standing, the alternator's label, the price of fuel, the number of scenes. Fuel and CO2"
                    + " need vehicle.engine in the scenario, money needs a price of fuel. Any currency, the same throughout."
        },
        footer = {
            "Examples:",
            "  curbwatt idle demo:high-idle",
            "  curbwatt idle demo:high-idle --scenes 150 --fuel-price 1.6 --automatic-start-price 900",
            "  curbwatt idle trucks/truck-4.json --out reports/truck-4-idle"
        })
final class IdleCommand implements Callable<Integer> {

    private static final double MOST_MONEY = 1e9;
    private static final double USUAL_DEVICE_YEARS = 10;

    @Mixin
    private ScenarioArgument scenario;

    @Option(
            names = "--scenes",
            paramLabel = "N",
            description = "How many such scenes a year has, 1 to 10000. Default: what the scenario says, else 100.")
    private Double scenes;

    @Option(
            names = "--engine-stage",
            paramLabel = "STAGE",
            description = "A stage that is on while the engine runs alone; may stand several times.")
    private List<String> engineStages;

    @Option(names = "--currency", paramLabel = "TEXT", description = "What the currency is called.")
    private String currency;

    @Option(
            names = "--fuel-price",
            paramLabel = "P",
            description = "Price of a litre of fuel; without one no money is spoken of.")
    private Double fuelPrice;

    @Option(
            names = "--hour-price",
            paramLabel = "P",
            description = "Wear and service of the engine for a running hour. Default: 0.")
    private Double hourPrice;

    @Option(
            names = "--start-price",
            paramLabel = "P",
            description = "Wear of starter and battery for a start. Default: 0.")
    private Double startPrice;

    @Option(
            names = "--idle-control-price",
            paramLabel = "P",
            description = "Price of an idle control, fitted. Default: 0.")
    private Double idleControlPrice;

    @Option(
            names = "--automatic-start-price",
            paramLabel = "P",
            description = "Price of an automatic start, fitted. Default: 0.")
    private Double automaticStartPrice;

    @Option(
            names = "--device-years",
            paramLabel = "N",
            description = "How long a device is used, 0.5 to 40 years. Default: 10.")
    private Double deviceYears;

    @Mixin
    private StudyOptions study;

    @Override
    public Integer call() {
        ReadyScenario ready = scenario.open();
        if (!IdleStudy.stands(IdleStory.question(ready))) {
            throw new InputException(
                    ready.source() + " has no phase with the engine idling, or off with the equipment in use:"
                            + " there is no standing to compare");
        }
        IdlePlan plan = plan(ready.studies().idle());
        return study.carryOut(
                ready, scenario.name(), (pool, watch) -> IdleReport.of(IdleStory.run(ready, plan, pool, watch)));
    }

    private IdlePlan plan(IdlePlan file) {
        return new IdlePlan(
                within("--scenes", scenes, 1, 10000, file.scenesPerYear()),
                engineStages == null ? file.engineStages() : Set.copyOf(engineStages),
                prices(file.prices()));
    }

    private Optional<Prices> prices(Optional<Prices> file) {
        if (fuelPrice == null && file.isEmpty()) {
            boolean others = Stream.of(hourPrice, startPrice, idleControlPrice, automaticStartPrice, deviceYears)
                    .anyMatch(price -> price != null);
            if (others || currency != null) {
                throw new InputException(
                        "prices need that of fuel; add --fuel-price, or studies.idle.fuelPricePerLitre");
            }
            return file;
        }
        Prices base = file.orElseGet(() -> new Prices("", 0, 0, 0, 0, 0, USUAL_DEVICE_YEARS));
        return Optional.of(new Prices(
                currency == null ? base.currency() : currency,
                price("--fuel-price", fuelPrice, base.fuelMoneyPerLitre()),
                price("--hour-price", hourPrice, base.wearMoneyPerH()),
                price("--start-price", startPrice, base.wearMoneyPerStart()),
                price("--idle-control-price", idleControlPrice, base.idleControlMoney()),
                price("--automatic-start-price", automaticStartPrice, base.automaticStartMoney()),
                within("--device-years", deviceYears, 0.5, 40, base.deviceYears())));
    }

    private static double price(String option, Double given, double left) {
        return within(option, given, 0, MOST_MONEY, left);
    }

    private static double within(String option, Double given, double least, double most, double left) {
        if (given == null) {
            return left;
        }
        if (!(given >= least && given <= most)) {
            throw new InputException(option + " is " + given + "; allowed is " + plain(least) + " to " + plain(most));
        }
        return given;
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }
}
