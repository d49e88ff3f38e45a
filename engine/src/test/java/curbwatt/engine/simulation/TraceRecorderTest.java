package curbwatt.engine.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.load.Loads;
import curbwatt.engine.result.SensedSample;
import curbwatt.engine.result.Trace;
import curbwatt.engine.result.TraceRow;
import curbwatt.engine.simulation.record.Step;
import curbwatt.engine.simulation.record.TraceRecorder;
import curbwatt.engine.vehicle.Bench;
import curbwatt.engine.vehicle.Circuit;
import java.util.List;
import org.junit.jupiter.api.Test;

class TraceRecorderTest {
    private final TraceRecorder recorder = new TraceRecorder(10, List.of("c"));

    @Test
    void withoutAStepItIsEmpty() {
        assertThat(recorder.trace().rows()).isEmpty();
        assertThat(recorder.trace().circuits()).containsExactly("c");
    }

    @Test
    void linesStandAtWholeSpacingsAndTheLastAtTheEnd() {
        recorder.record(new Straight(0, 7, 12, 11.93, 4));
        recorder.record(new Straight(7, 33, 11.93, 11.67, 4));
        assertThat(recorder.trace().rows().stream().map(TraceRow::timeS)).containsExactly(0.0, 10.0, 20.0, 30.0, 33.0);
    }

    @Test
    void aStepThatEndsOnALineAddsNoneTwice() {
        recorder.record(new Straight(0, 10, 12, 11, 4));
        recorder.record(new Straight(10, 20, 11, 12, 4));
        assertThat(recorder.trace().rows().stream().map(TraceRow::timeS)).containsExactly(0.0, 10.0, 20.0);
    }

    @Test
    void extremesAndMeansAreThoseSinceTheLineBefore() {
        recorder.record(new Straight(0, 4, 12, 12, 2));
        recorder.record(new Straight(4, 6, 11, 11, 30));
        recorder.record(new Straight(6, 20, 12.2, 12.2, 2));
        TraceRow row = recorder.trace().rows().get(1);
        assertThat(row.nodeMinV()).isEqualTo(11);
        assertThat(row.nodeMaxV()).isEqualTo(12.2);
        assertThat(row.nodeMeanV()).isCloseTo((4 * 12 + 2 * 11 + 4 * 12.2) / 10, within(1e-12));
        assertThat(row.batteryMeanA()).isCloseTo((8 * 2 + 2 * 30) / 10.0, within(1e-12));
        assertThat(row.circuitMeanA().get(0)).isCloseTo((8 * 2 + 2 * 30) / 10.0, within(1e-12));
        TraceRow next = recorder.trace().rows().get(2);
        assertThat(next.nodeMinV()).isEqualTo(12.2);
        assertThat(next.batteryMeanA()).isCloseTo(2, within(1e-12));
    }

    @Test
    void aLineInsideAStepLiesOnItsStraightLine() {
        recorder.record(new Straight(0, 40, 12, 11.6, 3));
        TraceRow row = recorder.trace().rows().get(2);
        assertThat(row.timeS()).isEqualTo(20);
        assertThat(row.nodeV()).isCloseTo(11.8, within(1e-12));
        assertThat(row.nodeMinV()).isCloseTo(11.8, within(1e-12));
        assertThat(row.nodeMaxV()).isCloseTo(11.9, within(1e-12));
        assertThat(row.nodeMeanV()).isCloseTo(11.85, within(1e-12));
    }

    @Test
    void spacingIsHeldWithoutDriftOverManyLines() {
        TraceRecorder fine = new TraceRecorder(0.1, List.of("c"));
        for (int i = 0; i < 1000; i++) {
            fine.record(new Straight(i, i + 1.0, 12, 12, 1));
        }
        List<TraceRow> rows = fine.trace().rows();
        assertThat(rows).hasSize(10_001);
        for (int i = 0; i < rows.size(); i++) {
            assertThat(rows.get(i).timeS()).isCloseTo(i * 0.1, within(1e-9));
        }
    }

    @Test
    void aWholeRunsLinesAddUpToItsCharge() {
        Bench bench = Bench.usual()
                .with(new Circuit(
                        "c",
                        0.01,
                        List.of(
                                Loads.current("steady", 6),
                                Loads.patterned("beacon", 9, Loads.flashing("k", 700, 0, 0, 300)))));
        TraceRecorder trace = new TraceRecorder(60, List.of("c"));
        var run = bench.run(trace, bench.off("p", 1830));
        Trace rows = trace.trace();
        double chargeAs = 0;
        for (int i = 1; i < rows.rows().size(); i++) {
            double lengthS = rows.rows().get(i).timeS() - rows.rows().get(i - 1).timeS();
            chargeAs += lengthS * rows.rows().get(i).circuitMeanA().get(0);
        }
        assertThat(chargeAs / 3600).isCloseTo(run.circuits().get(0).chargeAh(), within(1e-9));
        assertThat(rows.rows().get(rows.rows().size() - 1).timeS()).isEqualTo(1830);
        assertThat(rows.rows().stream().mapToDouble(TraceRow::nodeMinV).min().orElseThrow())
                .isEqualTo(run.lowestV());
    }

    @Test
    void whatEachCutoffSensesIsKept() {
        TraceRecorder both = new TraceRecorder(10, List.of("c"), List.of("first", "second"));
        both.record(new Straight(0, 10, 12, 11, 4));
        assertThat(both.trace().cutoffs()).containsExactly("first", "second");
        assertThat(both.trace().rows().get(1).sensed())
                .containsExactly(new SensedSample(11, 11, 12), new SensedSample(10, 10, 11));
        assertThat(both.trace().rows().get(1).sensedMaxV()).isEqualTo(12);
    }

    @Test
    void aSpacingOutOfRangeIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TraceRecorder(0, List.of()))
                .withMessageContaining("spacingS is 0.0 s, allowed is 0.01 to 86400.0 s");
    }

    /** A step with straight voltages and one current everywhere. */
    private record Straight(double startS, double endS, double nodeStartV, double nodeEndV, double batteryA)
            implements Step {
        @Override
        public double engineRunS() {
            return 0;
        }

        @Override
        public double fuelLitres() {
            return 0;
        }

        @Override
        public boolean hasEquipmentNode() {
            return false;
        }

        @Override
        public double equipmentStartV() {
            return 0;
        }

        @Override
        public double equipmentEndV() {
            return 0;
        }

        @Override
        public double auxiliaryA() {
            return 0;
        }

        @Override
        public double linkA() {
            return 0;
        }

        @Override
        public double auxiliaryChargeEndFraction() {
            return 0;
        }

        @Override
        public double auxiliaryC() {
            return 0;
        }

        @Override
        public int cutoffs() {
            return 2;
        }

        @Override
        public double sensedStartV(int cutoff) {
            return nodeStartV - cutoff;
        }

        @Override
        public double sensedEndV(int cutoff) {
            return nodeEndV - cutoff;
        }

        @Override
        public double readingStartV() {
            return nodeStartV;
        }

        @Override
        public double readingEndV() {
            return nodeEndV;
        }

        @Override
        public double alternatorA() {
            return 0;
        }

        @Override
        public double loadPeakA() {
            return 0;
        }

        @Override
        public double circuitA(int circuit) {
            return batteryA;
        }

        @Override
        public int circuits() {
            return 1;
        }

        @Override
        public double chargeStartFraction() {
            return 1;
        }

        @Override
        public double chargeEndFraction() {
            return 1;
        }

        @Override
        public double batteryC() {
            return 25;
        }

        @Override
        public double residualA() {
            return 0;
        }
    }
}
