package curbwatt.charts.wording;

import curbwatt.charts.run.RunStory;
import curbwatt.engine.result.TraceRow;
import curbwatt.engine.verdict.Finding;
import curbwatt.engine.verdict.Requirement;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * When a battery's charge first lay below what was asked of it, straight between two lines of the trace.
 *
 * @param story the run
 */
public record ChargeCrossing(RunStory story) {

    /** When a finding was decided (s): as the verdict says, or by the trace where a charge was not kept. */
    public OptionalDouble decidedS(Finding finding) {
        if (finding.met()) {
            return finding.atS();
        }
        if (finding.requirement() instanceof Requirement.KeepAuxiliaryCharge) {
            return belowS(finding.limit(), row -> row.equipment().orElseThrow().stateOfChargeFraction());
        }
        return finding.requirement() instanceof Requirement.KeepCharge ? belowS(finding.limit()) : finding.atS();
    }

    /** When the starter battery's charge first lay below a share (s); empty: never, as far as the trace tells. */
    OptionalDouble belowS(double fraction) {
        return belowS(fraction, TraceRow::stateOfChargeFraction);
    }

    private OptionalDouble belowS(double fraction, ToDoubleFunction<TraceRow> chargeFraction) {
        TraceRow before = null;
        for (TraceRow row : story.trace().rows()) {
            double charge = chargeFraction.applyAsDouble(row);
            if (charge < fraction) {
                if (before == null) {
                    return OptionalDouble.of(row.timeS());
                }
                double share = (chargeFraction.applyAsDouble(before) - fraction)
                        / (chargeFraction.applyAsDouble(before) - charge);
                return OptionalDouble.of(before.timeS() + share * (row.timeS() - before.timeS()));
            }
            before = row;
        }
        return OptionalDouble.empty();
    }
}
