package curbwatt.charts.output;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.run.SampleRun;
import curbwatt.engine.result.Trace;
import java.util.List;
import org.junit.jupiter.api.Test;

class TraceCsvTest {

    @Test
    void hasAHeadAndALineForEachRow() {
        Trace trace = SampleRun.HOLDS.story().trace();
        List<String> lines = TraceCsv.of(trace).lines().toList();
        assertThat(lines)
                .hasSize(1 + trace.rows().size())
                .first()
                .isEqualTo("timeS,nodeV,nodeMinV,nodeMeanV,nodeMaxV,sensedV,sensedMinV,sensedMaxV,batteryMeanA,"
                        + "alternatorMeanA,stateOfCharge,batteryC,loadMeanA:Scene lights,\"loadMeanA:Radios, desk\"");
        assertThat(lines.subList(1, lines.size()))
                .allSatisfy(line -> assertThat(line.split(",", -1)).hasSize(14));
    }

    @Test
    void hasColumnsForASecondBatteryOnlyWhereThereIsOne() {
        List<String> lines =
                TraceCsv.of(SampleRun.TWO_BATTERIES.story().trace()).lines().toList();
        assertThat(lines.get(0))
                .contains(",batteryC,equipmentV,equipmentMinV,equipmentMeanV,equipmentMaxV,auxiliaryMeanA,linkMeanA,"
                        + "auxiliaryStateOfCharge,auxiliaryC,loadMeanA:Chassis,");
        assertThat(lines).allSatisfy(line -> assertThat(line.split(",", -1)).hasSize(30));
    }

    @Test
    void eachOfSeveralCutoffsHasItsOwnColumns() {
        Trace trace = SampleRun.TWO_BATTERIES.story().trace();
        List<String> lines = TraceCsv.of(trace).lines().toList();
        assertThat(lines.get(0))
                .endsWith(",sensedV:Light cutoff,sensedMinV:Light cutoff,sensedMaxV:Light cutoff,"
                        + "sensedV:Radio cutoff,sensedMinV:Radio cutoff,sensedMaxV:Radio cutoff");
        String[] last = lines.get(lines.size() - 1).split(",", -1);
        // both sense at the equipment node, whose own columns begin at place 12
        assertThat(last[24]).isEqualTo(last[27]).isEqualTo(last[12]);
        assertThat(last[25]).isEqualTo(last[28]).isEqualTo(last[13]);
    }

    @Test
    void endsLinesAsTheStandardSays() {
        assertThat(TraceCsv.of(SampleRun.HOLDS.story().trace()))
                .endsWith("\r\n")
                .doesNotContain("\n\n");
    }

    @Test
    void quotesWithinANameAreDoubled() {
        assertThat(TraceCsv.of(new Trace(10, List.of("the \"big\" one"), List.of(), List.of())))
                .endsWith(",\"loadMeanA:the \"\"big\"\" one\"\r\n");
    }
}
