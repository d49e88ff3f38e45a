package curbwatt.engine.link;

import curbwatt.engine.quantity.Require;

/**
 * What joins the starter node S and the equipment node X. Currents count positive from S to X.
 *
 * <p>A link is one of two things to the network: a <em>path</em> whose current follows from the voltages at its ends,
 * or a
 * <em>charger</em> that takes power at S and gives a regulated current at X.
 */
public sealed interface BatteryLink {

    /**
     * A cable: always joined, both ways.
     *
     * @param resistanceOhm its resistance (Ω), 0 … 10⁶; 0: one node
     */
    record Solid(double resistanceOhm) implements BatteryLink {
        /** Refuses a resistance out of range. */
        public Solid {
            Require.inside("linkOhm", resistanceOhm, 0, 1e6, "Ω");
        }
    }

    /**
     * A charge-sensing relay: joined, both ways, while there is charge to share.
     *
     * @param closeV voltage at S at or above which it closes (V), 12 … 16
     * @param closeDelayS unbroken time there before it closes (s), 0 … 3600
     * @param openV voltage at S below which it opens (V), 10 … closeV
     * @param openDelayS unbroken time there before it opens (s), 0 … 3600
     * @param resistanceOhm resistance of contact and cable (Ω), 0.0001 … 1
     */
    record ChargeRelay(double closeV, double closeDelayS, double openV, double openDelayS, double resistanceOhm)
            implements BatteryLink {
        /** Refuses figures out of range, and an opening level not below the closing level. */
        public ChargeRelay {
            Require.inside("closeV", closeV, 12, 16, "V");
            Require.inside("closeDelayS", closeDelayS, 0, 3600, "s");
            Require.inside("openV", openV, 10, Math.nextDown(closeV), "V");
            Require.inside("openDelayS", openDelayS, 0, 3600, "s");
            Require.inside("linkOhm", resistanceOhm, 0.0001, 1, "Ω");
        }
    }

    /**
     * A diode: from S to X alone.
     *
     * @param forwardV voltage that it keeps (V), 0 … 1.5
     * @param resistanceOhm resistance of diode and cable (Ω), 0.0001 … 1
     */
    record Diode(double forwardV, double resistanceOhm) implements BatteryLink {
        /** Refuses figures out of range. */
        public Diode {
            Require.inside("forwardV", forwardV, 0, 1.5, "V");
            Require.inside("linkOhm", resistanceOhm, 0.0001, 1, "Ω");
        }
    }

    /**
     * A charger from S to X with a regulated output.
     *
     * @param limitA largest output current (A), 0.1 … 300
     * @param outputV output voltage (V), 12 … 16
     * @param efficiencyFraction output over input power, 0.5 … 1
     * @param startV voltage at S at or above which it starts (V), 11 … 15
     * @param startDelayS unbroken time there before it starts (s), 0 … 3600
     * @param stopV voltage at S below which it stops (V), 9 … startV
     * @param stopDelayS unbroken time there before it stops (s), 0 … 3600
     */
    record DcDcCharger(
            double limitA,
            double outputV,
            double efficiencyFraction,
            double startV,
            double startDelayS,
            double stopV,
            double stopDelayS)
            implements BatteryLink {
        /** Refuses figures out of range, and a stop level not below the start level. */
        public DcDcCharger {
            Require.inside("limitA", limitA, 0.1, 300, "A");
            Require.inside("outputV", outputV, 12, 16, "V");
            Require.inside("efficiencyFraction", efficiencyFraction, 0.5, 1, "");
            Require.inside("startV", startV, 11, 15, "V");
            Require.inside("startDelayS", startDelayS, 0, 3600, "s");
            Require.inside("stopV", stopV, 9, Math.nextDown(startV), "V");
            Require.inside("stopDelayS", stopDelayS, 0, 3600, "s");
        }
    }
}
