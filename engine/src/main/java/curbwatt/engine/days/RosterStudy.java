package curbwatt.engine.days;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.BatteryDay;
import curbwatt.engine.result.DayRow;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.DayPlan;
import curbwatt.engine.scene.Roster;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.simulation.StepControl;
import curbwatt.engine.simulation.record.DayRecorder;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.engine.wear.ChargeThroughput;
import curbwatt.engine.wear.CycleCount;
import curbwatt.engine.wear.CycleLife;
import curbwatt.engine.wear.LifeEstimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A vehicle and its roster, ready to run. A value: the same study gives the same result.
 *
 * @param vehicle the vehicle, its loads in whatever pattern; they run as {@link SteadyLoads}
 * @param roster its duty
 */
public record RosterStudy(Vehicle vehicle, Roster roster) {

    /** Events this close before midnight are the next day's (s): phases begin at midnight but for rounding. */
    private static final double MIDNIGHT_S = 0.01;

    /** Refuses missing parts. */
    public RosterStudy {
        Objects.requireNonNull(vehicle, "vehicle");
        Objects.requireNonNull(roster, "roster");
    }

    /** Runs all days. */
    public RosterResult run() {
        return run(Recorder.none(), StepControl.forDays());
    }

    /** Runs all days with steps of another fineness, and with a recorder that watches, too. */
    public RosterResult run(Recorder watcher, StepControl control) {
        DayRecorder recorder = new DayRecorder();
        RunResult run = Simulation.of(SteadyLoads.of(vehicle), roster.asScene()).run(recorder.and(watcher), control);
        List<Day> days = days(recorder.rows(), run.events());
        OptionalInt failedDay = days.stream()
                .filter(day -> day.failedStarts() > 0)
                .mapToInt(Day::day)
                .findFirst();
        OptionalDouble lostS = run.restartTimeS();
        return new RosterResult(
                days,
                batteries(days.subList(0, failedDay.orElse(days.size())), recorder),
                failedDay,
                lostS.isPresent() ? OptionalInt.of(dayOf(lostS.getAsDouble())) : OptionalInt.empty(),
                run);
    }

    private int dayOf(double timeS) {
        return Math.min(roster.days(), 1 + (int) ((timeS + MIDNIGHT_S) / DayPlan.DAY_S));
    }

    private List<Day> days(List<DayRow> rows, List<Event> events) {
        int[] trips = new int[roster.days() + 1];
        int[] starts = new int[roster.days() + 1];
        int[] failedStarts = new int[roster.days() + 1];
        for (Event event : events) {
            int day = dayOf(event.timeS());
            trips[day] += event.kind() == EventKind.CUTOFF_TRIPPED ? 1 : 0;
            starts[day] += event.kind() == EventKind.ENGINE_STARTED ? 1 : 0;
            failedStarts[day] += event.kind() == EventKind.ENGINE_DID_NOT_START ? 1 : 0;
        }
        return rows.stream()
                .map(row -> new Day(
                        row.day(),
                        roster.plan(row.day()).name(),
                        row.batteries(),
                        trips[row.day()],
                        starts[row.day()],
                        failedStarts[row.day()],
                        row.engineRunS(),
                        row.fuelLitres()))
                .toList();
    }

    private List<BatteryDays> batteries(List<Day> days, DayRecorder recorder) {
        List<BatteryDays> batteries = new ArrayList<>();
        batteries.add(battery(
                0,
                vehicle.battery().name(),
                vehicle.battery().battery(),
                roster.start().stateOfChargeFraction(),
                days,
                recorder));
        vehicle.auxiliary()
                .ifPresent(second -> batteries.add(battery(
                        1,
                        second.installation().name(),
                        second.installation().battery(),
                        second.startChargeFraction(),
                        days,
                        recorder)));
        return batteries;
    }

    private BatteryDays battery(
            int place, String name, Battery battery, double startCharge, List<Day> days, DayRecorder recorder) {
        List<BatteryDay> own =
                days.stream().map(day -> day.batteries().get(place)).toList();
        CycleCount cycles = CycleCount.of(recorder.turnFractions(place, days.size()));
        return new BatteryDays(
                name,
                battery.capacityAh(),
                startCharge,
                own.get(own.size() - 1).endChargeFraction(),
                own.stream().mapToDouble(BatteryDay::lowestChargeFraction).reduce(startCharge, Math::min),
                Trend.of(
                        own.stream().map(BatteryDay::endChargeFraction).toList(),
                        roster.pattern().size()),
                new ChargeThroughput(
                        own.stream().mapToDouble(BatteryDay::dischargedAh).sum(),
                        own.stream().mapToDouble(BatteryDay::chargedAh).sum()),
                cycles,
                life(battery.parameters().chemistry()).map(life -> LifeEstimate.of(cycles, life, days.size())));
    }

    /** A flooded battery is taken to be a starter battery, the kind that stands cycling worst. */
    private static Optional<CycleLife> life(Chemistry chemistry) {
        return switch (chemistry) {
            case FLOODED -> Optional.of(CycleLife.floodedStarter());
            case AGM -> Optional.of(CycleLife.absorbedMat());
            case LFP -> Optional.empty();
        };
    }
}
