package curbwatt.charts.wording;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.run.SampleScenario;
import curbwatt.charts.run.ScenarioRunner;
import curbwatt.scenarios.assemble.ReadyScenario;
import org.junit.jupiter.api.Test;

class HeadlineTest {

    private static String of(ReadyScenario scenario) {
        RunStory story = new ScenarioRunner(scenario).run(share -> {});
        story.verdict().findings().forEach(f -> {
            FindingText t = new FindingText(f, scenario.vehicle(), story.result());
            System.out.println("   " + t.asked() + " | " + t.found() + " | " + t.limit() + " | " + t.reason());
        });
        System.out.println(new ChartTitle(story).voltage());
        System.out.println(new ChartTitle(story).balance());
        System.out.println(new ChartTitle(story).alternator());
        System.out.println(new ChartTitle(story).flash());
        story.result().events().forEach(e -> System.out.println(e.timeS() + " " + EventText.sentence(e)));
        String s = new Headline(story).sentence();
        System.out.println(s);
        return s;
    }

    @Test
    void x() {
        of(SampleScenario.holds());
        of(SampleScenario.cutOffEarly());
        of(SampleScenario.strands());
        of(SampleScenario.dropsOut());
        of(SampleScenario.asksNothing());
        assertThat(new Object()).isNotNull();
    }
}
