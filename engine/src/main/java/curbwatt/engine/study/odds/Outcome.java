package curbwatt.engine.study.odds;

import java.util.OptionalDouble;

/**
 * What one draw came to.
 *
 * @param met whether everything asked was met
 * @param heldFraction share of the time asked for that the circuits to be held were held, 0 … 1; empty: none is to be held
 * @param restartMarginV room above the minimum cranking voltage at the worst of the starts looked at (V); a battery that
 *     can't deliver the current at all counts as one that falls to 0 V
 * @param enoughMargin whether that is what the scenario asks for, or where it does not ask, whether there is any
 * @param tripS first opening of any cutoff (s); empty: none opened
 * @param tripped whether a cutoff opened on low voltage
 * @param nuisance whether it did, although without it the engine would have started at every moment and nothing else that it guards
 *     would have been lost
 */
public record Outcome(
        boolean met,
        OptionalDouble heldFraction,
        double restartMarginV,
        boolean enoughMargin,
        OptionalDouble tripS,
        boolean tripped,
        boolean nuisance) {

    /** Whether the circuits to be held were held as long as asked; also true if none is to be held. */
    public boolean held() {
        return heldFraction.orElse(1) >= 1;
    }

    /** Whether the engine starts whenever it is looked at. */
    public boolean starts() {
        return restartMarginV >= 0;
    }
}
