package curbwatt.scenarios.file;

import java.util.List;
import java.util.Optional;

/**
 * An alternator.
 *
 * @param place where it stands
 * @param part catalogue part that supplies what is left out
 * @param idleA label output at the low shaft speed, cold (A)
 * @param ratedA label output at the high shaft speed, cold (A)
 * @param idleRpm low shaft speed of the label (1/min)
 * @param ratedRpm high shaft speed of the label (1/min)
 * @param table measured output instead of the label
 * @param hotFactorLow share of the output left when hot, at low speed
 * @param hotFactorHigh share of the output left when hot, at high speed
 * @param setPointV regulated voltage at 25 °C (V)
 * @param setPointSlopeMvPerK its temperature coefficient (mV/K)
 * @param lowestSetPointV lower clamp (V)
 * @param highestSetPointV upper clamp (V)
 * @param pulleyRatio shaft turns for one turn of the engine
 * @param rampS time of growth after a start (s)
 */
public record AlternatorEntry(
        Place place,
        Optional<String> part,
        Optional<Double> idleA,
        Optional<Double> ratedA,
        Optional<Double> idleRpm,
        Optional<Double> ratedRpm,
        List<OutputEntry> table,
        Optional<Double> hotFactorLow,
        Optional<Double> hotFactorHigh,
        Optional<Double> setPointV,
        Optional<Double> setPointSlopeMvPerK,
        Optional<Double> lowestSetPointV,
        Optional<Double> highestSetPointV,
        Optional<Double> pulleyRatio,
        Optional<Double> rampS) {

    /** Takes a missing table as an empty one. */
    public AlternatorEntry {
        table = table == null ? List.of() : List.copyOf(table);
    }

    /**
     * Returns this entry with the part's figures where it has none of its own. A label or a table of its own replaces
     * the part's as a whole table, or figure by figure.
     */
    public AlternatorEntry over(AlternatorEntry other) {
        boolean labelled = idleA.isPresent() || ratedA.isPresent();
        return new AlternatorEntry(
                place,
                part,
                idleA.or(other::idleA),
                ratedA.or(other::ratedA),
                idleRpm.or(other::idleRpm),
                ratedRpm.or(other::ratedRpm),
                table.isEmpty() && !labelled ? other.table : table,
                hotFactorLow.or(other::hotFactorLow),
                hotFactorHigh.or(other::hotFactorHigh),
                setPointV.or(other::setPointV),
                setPointSlopeMvPerK.or(other::setPointSlopeMvPerK),
                lowestSetPointV.or(other::lowestSetPointV),
                highestSetPointV.or(other::highestSetPointV),
                pulleyRatio.or(other::pulleyRatio),
                rampS.or(other::rampS));
    }
}
