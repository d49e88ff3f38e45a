package curbwatt.engine.study.settings;

import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.study.Answer;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.Variation;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Puts settings of one cutoff to the test.
 *
 * @param question the vehicle in its scene, and what is asked
 * @param cutoff name of the cutoff
 * @param spread sizes of the changes
 */
record Trial(Question question, String cutoff, Spread spread) {

    /**
     * What a run came to.
     *
     * @param fate what it says of the setting; empty: the change is more than the model can take
     * @param opened whether the cutoff may have opened in it
     */
    record Run(Optional<Fate> fate, boolean opened) {

        Run {
            Objects.requireNonNull(fate, "fate");
        }

        /** Whether everything went as if there were no cutoff. */
        boolean isQuiet() {
            return !opened;
        }
    }

    Trial {
        Objects.requireNonNull(question, "question");
        Objects.requireNonNull(cutoff, "cutoff");
        Objects.requireNonNull(spread, "spread");
    }

    /** What becomes of a setting, from a run of its own. */
    Fate fate(TripSetting setting) {
        return run(setting).fate().orElseThrow();
    }

    /** The same trial of another vehicle or scene. */
    Trial of(Variation variation) {
        return new Trial(question.of(variation), cutoff, spread);
    }

    /** Makes the run of a setting. */
    Run run(TripSetting setting) {
        return setting.isPossible()
                ? run(question.of(setting.on(cutoff)))
                : new Run(Optional.of(FateReader.impossible(cutoff)), true);
    }

    /** Makes its run at a distance in a direction. */
    Run run(TripSetting setting, Direction direction, double distance) {
        Question changed;
        try {
            changed = question.of(setting.on(cutoff)).of(direction.at(cutoff, spread, distance));
        } catch (IllegalArgumentException beyondTheModel) {
            return new Run(Optional.empty(), true);
        }
        return run(changed);
    }

    private Run run(Question asked) {
        Answer answer = asked.answer();
        Set<String> cutoffs = question.simulation().vehicle().cutoffs().stream()
                .map(LowVoltageCutoff::name)
                .collect(Collectors.toSet());
        return new Run(Optional.of(new FateReader(cutoff, cutoffs).fate(answer)), answer.opened(cutoff));
    }
}
