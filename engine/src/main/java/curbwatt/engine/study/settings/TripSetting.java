package curbwatt.engine.study.settings;

import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.study.CutoffSetting;
import curbwatt.engine.study.Variation;
import java.util.Objects;

/**
 * A setting of a cutoff.
 *
 * @param reclose what closes it again
 * @param tripV trip level (V)
 * @param tripDelayS delay (s)
 */
public record TripSetting(RecloseRule reclose, double tripV, double tripDelayS) {

    /** Refuses a missing rule. */
    public TripSetting {
        Objects.requireNonNull(reclose, "reclose");
    }

    /** Whether it can be set at all: a cutoff that closes by voltage must close above its trip level. */
    public boolean isPossible() {
        return !(reclose instanceof RecloseRule.AboveVoltage above) || above.levelV() > tripV;
    }

    /** Whether its trip level is as low and its delay as long as another's, so that it opens no sooner. */
    public boolean isAsMildAs(TripSetting other) {
        return tripV <= other.tripV && tripDelayS >= other.tripDelayS;
    }

    /** Gives it to a cutoff; a warning level that would lie below the trip level moves up to it. */
    public Variation on(String cutoff) {
        return new CutoffSetting(cutoff, settings -> settings.tripping(tripV, tripDelayS, reclose));
    }
}
