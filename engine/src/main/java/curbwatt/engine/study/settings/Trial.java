package curbwatt.engine.study.settings;

import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.Variation;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Puts settings of one cutoff to the test.
 *
 * @param question the vehicle in its scene, and what is asked
 * @param cutoff name of the cutoff
 * @param spread sizes of the changes
 */
record Trial(Question question, String cutoff, Spread spread) {

    Trial {
        Objects.requireNonNull(question, "question");
        Objects.requireNonNull(cutoff, "cutoff");
        Objects.requireNonNull(spread, "spread");
    }

    /** The same trial of another vehicle or scene. */
    Trial of(Variation variation) {
        return new Trial(question.of(variation), cutoff, spread);
    }

    /** What becomes of a setting. */
    Fate fate(TripSetting setting) {
        return setting.isPossible()
                ? reader().fate(question.of(setting.on(cutoff)).answer())
                : FateReader.impossible(cutoff);
    }

    /** What becomes of it at a distance in a direction; empty: the change is more than the model can take. */
    Optional<Fate> fate(TripSetting setting, Direction direction, double distance) {
        Question changed;
        try {
            changed = question.of(setting.on(cutoff)).of(direction.at(cutoff, spread, distance));
        } catch (IllegalArgumentException beyondTheModel) {
            return Optional.empty();
        }
        return Optional.of(reader().fate(changed.answer()));
    }

    /** Where a setting fails at a distance, the first direction in order; empty: it stands them all. */
    Optional<Room.End> firstEnd(TripSetting setting, double distance) {
        for (Direction direction : Direction.values()) {
            Optional<Fate> fate = fate(setting, direction, distance);
            if (fate.filter(Fate::isMet).isEmpty()) {
                return Optional.of(new Room.End(direction, distance, fate));
            }
        }
        return Optional.empty();
    }

    private FateReader reader() {
        return new FateReader(
                cutoff,
                question.simulation().vehicle().cutoffs().stream()
                        .map(LowVoltageCutoff::name)
                        .collect(Collectors.toSet()));
    }
}
