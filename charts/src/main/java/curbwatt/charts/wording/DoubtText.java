package curbwatt.charts.wording;

import curbwatt.charts.run.RunStory;
import curbwatt.engine.verdict.Doubt;
import java.util.ArrayList;
import java.util.List;

/** Which number not to trust, and why. */
public final class DoubtText {

    private DoubtText() {}

    /** What to doubt about any run. */
    public static final String ALWAYS =
            "Voltages and times in general: they follow from labels. A battery of some age differs"
                    + " from its label; a measured capacity and resistance in the scenario help more than anything else.";

    /** What a reader should doubt about this run, what the engine found first. */
    public static List<String> of(RunStory story) {
        List<String> sentences = new ArrayList<>();
        story.verdict().doubts().forEach(doubt -> sentences.add(sentence(doubt)));
        sentences.addAll(new TripSoftness(story).sentences());
        return List.copyOf(sentences);
    }

    /** The doubt in a sentence or two. */
    public static String sentence(Doubt doubt) {
        String subject = PlainText.quoted(doubt.subject());
        return switch (doubt.kind()) {
            case ALTERNATOR_NEAR_CUT_IN ->
                "The alternator current in " + subject
                        + ": the shaft turns so slowly that a label says little about the output. Measure it at this engine speed.";
            case ELECTROLYTE_MAY_FREEZE ->
                "Everything after the cold: the electrolyte of " + subject
                        + " may have frozen at this charge, and a frozen battery neither cranks nor takes charge. Do not charge it"
                        + " before it has thawed.";
            case NEAR_TRIP ->
                "That " + subject + " stays closed: the voltage came so near its trip level that a sensor"
                        + " with the usual error may open it.";
            case CUTOFF_CHATTERS ->
                "The times at which " + subject
                        + " opens and closes: it does so more than twice in an hour. Its reclose level or delay is too small.";
            case VOLTAGE_COLLAPSED ->
                "What happens at " + Places.named(doubt.subject()) + " after its voltage collapsed: real equipment may"
                        + " restart again and again, and the model does not follow that.";
            case TEMPERATURE_OUT_OF_MODEL ->
                "All figures of " + subject
                        + ": it was colder than −20 °C or hotter than 50 °C, where the model has nothing to stand on.";
            case DEEP_DISCHARGE ->
                "The next scene: " + subject
                        + " was drawn below half its charge, which shortens its life; after some of these it holds less than its"
                        + " label says.";
        };
    }
}
