package curbwatt.engine.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.simulation.record.Step;
import java.util.Arrays;
import java.util.List;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * Long steps against edge by edge: two thousand random vehicles in random scenes, side by side.
 *
 * <p>Where the two are further apart than is asked, the reference is run again with steps a twentieth as long: by how much it moves
 * itself is allowed besides. A start of the engine that comes a moment later falls into another flash: there the starter's
 * draw in that moment is allowed, and the lowest voltage is not compared.
 */
class EnvelopeAgreesTest {

    private static final int SCENES = 2000;
    private static final int SLOW_SCENES = 400;
    private static final int CALLING_SCENES = 800;
    private static final double SLOWED = 7;
    private static final double TIME_S = 1;
    private static final double TIME_FRACTION = 1e-3;
    private static final double CHARGE_FRACTION = 1e-4;
    private static final double VOLTAGE_V = 2e-3;
    private static final double SAME_START_S = 1e-3;
    /** A starter draws less than this share of a battery's charge in a second. */
    private static final double CRANKING_PER_S = 300 / 40.0 / 3600;

    private static final StepControl FINE = new StepControl(1e-4, 1e-7, 1.5);

    /** A run, and the lowest and highest voltages of both nodes in it. */
    private record Seen(RunResult run, List<Double> extremesV) {

        static Seen of(Simulation simulation, StepControl control, Fidelity fidelity) {
            double infinity = Double.POSITIVE_INFINITY;
            double[] extremesV = {infinity, -infinity, infinity, -infinity};
            RunResult run = simulation.run(step -> note(step, extremesV), control, fidelity);
            return new Seen(run, Arrays.stream(extremesV).boxed().toList());
        }

        private static void note(Step step, double[] extremesV) {
            extremesV[0] = Math.min(extremesV[0], step.nodeLowestV());
            extremesV[1] = Math.max(extremesV[1], step.nodeHighestV());
            if (step.hasEquipmentNode()) {
                extremesV[2] = Math.min(extremesV[2], step.equipmentLowestV());
                extremesV[3] = Math.max(extremesV[3], step.equipmentHighestV());
            }
        }

        Event event(int place) {
            return run.events().get(place);
        }

        double charge(int battery) {
            return run.batteries().get(battery).endChargeFraction();
        }

        boolean hasSameEvents(Seen other) {
            return kinds().equals(other.kinds());
        }

        private List<String> kinds() {
            return run.events().stream()
                    .map(event -> event.kind() + " " + event.subject())
                    .toList();
        }

        /** By how much the engine's starts come at other times (s). */
        double startsOffS(Seen other) {
            double offS = 0;
            for (int i = 0; i < run.events().size(); i++) {
                if (event(i).kind() == EventKind.ENGINE_STARTED) {
                    offS += Math.abs(event(i).timeS() - other.event(i).timeS());
                }
            }
            return offS;
        }
    }

    @Test
    void sameEventsChargesAndVoltages() {
        assertThat(disagreements(SCENES, RandomScenes::of)).isEmpty();
    }

    /** Arrow boards and beacons of some seconds a turn: batteries swing further about their mean within one. */
    @Test
    void theSameWithSlowClocks() {
        assertThat(disagreements(SLOW_SCENES, seed -> RandomScenes.slowed(seed, SLOWED)))
                .isEmpty();
    }

    /** Radios: a step averages over their calls too, where nothing hangs on one. */
    @Test
    void theSameWithCallsWithinAMinute() {
        assertThat(disagreements(CALLING_SCENES, RandomScenes::calling)).isEmpty();
    }

    private static List<String> disagreements(int scenes, LongFunction<Simulation> simulations) {
        return LongStream.rangeClosed(1, scenes)
                .parallel()
                .mapToObj(seed -> disagreement(seed, simulations.apply(seed)))
                .filter(text -> !text.isEmpty())
                .toList();
    }

    static String disagreement(long seed, Simulation simulation) {
        Seen fast = Seen.of(simulation, StepControl.usual(), Fidelity.ENVELOPE);
        Seen exact = Seen.of(simulation, StepControl.usual(), Fidelity.RESOLVED);
        String first = disagreement(fast, exact, exact);
        if (first.isEmpty()) {
            return "";
        }
        Seen finer = Seen.of(simulation, FINE, Fidelity.RESOLVED);
        String second = disagreement(fast, exact, finer);
        return second.isEmpty() ? "" : "seed " + seed + ": " + second;
    }

    /** Where long steps are further off than is asked and than the reference moves itself; empty: nowhere. */
    private static String disagreement(Seen fast, Seen exact, Seen finer) {
        if (!fast.hasSameEvents(exact) && !fast.hasSameEvents(finer)) {
            return "events " + exact.kinds() + " against " + fast.kinds();
        }
        if (!exact.hasSameEvents(finer)) {
            return "";
        }
        for (int i = 0; i < exact.run().events().size(); i++) {
            double exactS = exact.event(i).timeS();
            double mayDifferS = Math.max(TIME_S, TIME_FRACTION * exactS)
                    + Math.abs(exactS - finer.event(i).timeS());
            if (Math.abs(exactS - fast.event(i).timeS()) > mayDifferS) {
                return exact.event(i) + " against " + fast.event(i);
            }
        }
        double startsOffS = fast.startsOffS(exact);
        for (int b = 0; b < exact.run().batteries().size(); b++) {
            double mayDiffer =
                    CHARGE_FRACTION + CRANKING_PER_S * startsOffS + Math.abs(exact.charge(b) - finer.charge(b));
            if (!(Math.abs(exact.charge(b) - fast.charge(b)) <= mayDiffer)) {
                return "charge of battery " + b + " " + exact.charge(b) + " against " + fast.charge(b);
            }
        }
        for (int v = 0; v < exact.extremesV().size(); v++) {
            boolean isLowest = v % 2 == 0;
            if (isLowest && startsOffS >= SAME_START_S) {
                continue;
            }
            double exactV = exact.extremesV().get(v);
            double offV = exactV == fast.extremesV().get(v)
                    ? 0
                    : Math.abs(exactV - fast.extremesV().get(v));
            double movesV = exactV == finer.extremesV().get(v)
                    ? 0
                    : Math.abs(exactV - finer.extremesV().get(v));
            if (offV > VOLTAGE_V + movesV) {
                return "voltages " + exact.extremesV() + " against " + fast.extremesV();
            }
        }
        return "";
    }
}
