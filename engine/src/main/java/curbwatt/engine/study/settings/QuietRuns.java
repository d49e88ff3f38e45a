package curbwatt.engine.study.settings;

import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Function;

/**
 * Runs of settings, of which those in which the cutoff never opens are made once. If it does not open at one setting, it
 * does not at any with a lower trip level and a longer delay either, and all these runs are one and the same. The mildest
 * setting's run speaks for them all, so that the answer does not depend on which was found first.
 */
final class QuietRuns {
    private final Function<TripSetting, Trial.Run> runs;
    private final TripSetting mildest;
    private final Queue<TripSetting> quiet = new ConcurrentLinkedQueue<>();
    private final Map<TripSetting, Trial.Run> spokesman = new ConcurrentHashMap<>();

    /**
     * Begins knowing none.
     *
     * @param runs makes a run, of the same vehicle each time
     * @param mildest setting with the lowest trip level and the longest delay of all
     */
    QuietRuns(Function<TripSetting, Trial.Run> runs, TripSetting mildest) {
        this.runs = runs;
        this.mildest = mildest;
    }

    /** What becomes of a setting; empty: the model can't take it. */
    Optional<Fate> fate(TripSetting setting) {
        // of one that can't be set nothing follows from others, whose rule of closing may be another
        if (setting.isPossible() && quiet.stream().anyMatch(setting::isAsMildAs)) {
            return spokesman().fate();
        }
        Trial.Run own = runs.apply(setting);
        if (own.isQuiet() && mildest.isAsMildAs(setting) && spokesman().isQuiet()) {
            quiet.add(setting);
            return spokesman().fate();
        }
        return own.fate();
    }

    private Trial.Run spokesman() {
        return spokesman.computeIfAbsent(mildest, runs);
    }
}
