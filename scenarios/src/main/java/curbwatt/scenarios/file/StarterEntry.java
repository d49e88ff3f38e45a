package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * A starter and what is asked of the battery meanwhile.
 *
 * @param place where it stands
 * @param part catalogue part that supplies what is left out
 * @param inrushA current while the motor stands still (A)
 * @param inrushS its length (s)
 * @param crankingA current while it turns, at 20 °C (A)
 * @param crankingS its length (s)
 * @param coldFactor that current at −20 °C as a multiple
 * @param minimumCrankingV lowest voltage at which the engine starts (V)
 * @param loadsStayOn whether the equipment stays on meanwhile
 */
public record StarterEntry(
        Place place,
        Optional<String> part,
        Optional<Double> inrushA,
        Optional<Double> inrushS,
        Optional<Double> crankingA,
        Optional<Double> crankingS,
        Optional<Double> coldFactor,
        Optional<Double> minimumCrankingV,
        Optional<Boolean> loadsStayOn) {

    /** Returns this entry with the part's figures where it has none of its own. */
    public StarterEntry over(StarterEntry other) {
        return new StarterEntry(
                place,
                part,
                inrushA.or(other::inrushA),
                inrushS.or(other::inrushS),
                crankingA.or(other::crankingA),
                crankingS.or(other::crankingS),
                coldFactor.or(other::coldFactor),
                minimumCrankingV.or(other::minimumCrankingV),
                loadsStayOn.or(other::loadsStayOn));
    }
}
