package curbwatt.charts.report;

import curbwatt.charts.run.CircuitWiring;
import curbwatt.charts.run.RunStory;
import curbwatt.charts.wording.WiringText;
import java.util.ArrayList;
import java.util.List;

/**
 * The tables of the report that are about feeds.
 *
 * @param story the run
 */
record WiringTables(RunStory story) {

    List<Table> all() {
        WiringText text = new WiringText(
                CircuitWiring.of(story.scenario()), story.scenario().vehicle().cutoffs());
        List<String> lead = new ArrayList<>(List.of(WiringText.DROP_SOURCE));
        lead.addAll(text.senseDrops());
        List<List<String>> findings = text.findings();
        if (findings.isEmpty()) {
            lead.add(WiringText.UNKNOWN);
        }
        lead.add(WiringText.CAUTION);
        Table drops = Table.of("wiring", "Wiring", String.join(" ", lead), WiringText.DROP_HEADS, text.drops());
        List<Table> tables = new ArrayList<>();
        tables.add(text.largest().isPresent() ? drops.marking(text.largest().getAsInt()) : drops);
        if (!findings.isEmpty()) {
            tables.add(Table.of(
                    "wiring-rules",
                    "Wires and fuses against rules",
                    String.join(" ", text.remedies()),
                    WiringText.FINDING_HEADS,
                    findings));
        }
        return tables;
    }
}
