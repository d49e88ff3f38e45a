package curbwatt.engine.study.odds;

import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.simulation.record.Step;
import java.util.Arrays;

/**
 * The course of one run in stretches of equal length: lowest voltage in each and the charge at its end; of the equipment
 * node and its battery where there is one, else of the starter's. Small, since thousands are kept.
 */
public final class Course {

    private final float[] lowestV;
    private final float[] chargeFraction;

    private Course(float[] lowestV, float[] chargeFraction) {
        this.lowestV = lowestV;
        this.chargeFraction = chargeFraction;
    }

    /** Whether the scene still lasted in a stretch. */
    boolean reaches(int stretch) {
        return !Float.isNaN(chargeFraction[stretch]);
    }

    /** Lowest voltage in a stretch (V). */
    double lowestV(int stretch) {
        return lowestV[stretch];
    }

    /** Charge at the end of a stretch, or of the scene if that comes first. */
    double chargeFraction(int stretch) {
        return chargeFraction[stretch];
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Course course
                && Arrays.equals(lowestV, course.lowestV)
                && Arrays.equals(chargeFraction, course.chargeFraction);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(lowestV) + Arrays.hashCode(chargeFraction);
    }

    /** Watches a run and keeps its course. */
    static final class Watching implements Recorder {

        private final double stretchS;
        private final float[] lowestV;
        private final float[] chargeFraction;

        /**
         * Makes a recorder.
         *
         * @param stretches how many stretches
         * @param stretchS length of each (s)
         */
        Watching(int stretches, double stretchS) {
            this.stretchS = stretchS;
            lowestV = new float[stretches];
            chargeFraction = new float[stretches];
            Arrays.fill(lowestV, Float.POSITIVE_INFINITY);
            Arrays.fill(chargeFraction, Float.NaN);
        }

        @Override
        public void record(Step step) {
            boolean pair = step.hasEquipmentNode();
            double startV = pair ? step.equipmentStartV() : step.nodeStartV();
            double endV = pair ? step.equipmentEndV() : step.nodeEndV();
            double charge = pair ? step.auxiliaryChargeEndFraction() : step.chargeEndFraction();
            int last = lowestV.length - 1;
            int first = Math.min(last, (int) (step.startS() / stretchS));
            // a step that ends with a stretch does not reach into the next
            int end = Math.min(last, Math.max(first, (int) Math.ceil(step.endS() / stretchS) - 1));
            // a long step dips below the line between its ends at every flash; its charge runs nearly straight
            double dipV = Math.min(startV, endV) - (pair ? step.equipmentLowestV() : step.nodeLowestV());
            double lengthS = step.endS() - step.startS();
            double slopeV = (endV - startV) / lengthS;
            double slopePerS = (charge - chargeBefore(first, charge)) / lengthS;
            for (int stretch = first; stretch <= end; stretch++) {
                double fromS = Math.max(step.startS(), stretch * stretchS);
                double toS = Math.min(step.endS(), (stretch + 1) * stretchS);
                double fromV = startV + slopeV * (fromS - step.startS());
                double toV = stretch == end ? endV : startV + slopeV * (toS - step.startS());
                lowestV[stretch] = Math.min(lowestV[stretch], (float) (Math.min(fromV, toV) - dipV));
                chargeFraction[stretch] = (float) (charge - slopePerS * (step.endS() - toS));
            }
        }

        /** Charge at the end of the step before, which reached into this stretch or ended where it begins. */
        private double chargeBefore(int stretch, double ifNone) {
            for (int each = stretch; each >= Math.max(0, stretch - 1); each--) {
                if (!Float.isNaN(chargeFraction[each])) {
                    return chargeFraction[each];
                }
            }
            return ifNone;
        }

        /** The course so far. */
        Course course() {
            return new Course(lowestV.clone(), chargeFraction.clone());
        }
    }
}
