package curbwatt.engine.battery;

import java.util.List;

/** Kind of battery. Flooded and AGM are six lead-acid cells in series, LFP four lithium cells: all nominally 12 V. */
public enum Chemistry {
    /** Liquid acid, vented or maintenance-free: the usual starter battery. */
    FLOODED(new ChemistryConstants(
            6,
            new RestVoltage.Line(11.90, 12.65, 0.0013),
            new ChemistryConstants.Discharge(0.25, 0.07, 0.007, 15_000, 0.5, 0.006, 0),
            new ChemistryConstants.Charge(1.0, 15, 0.2),
            new ChemistryConstants.Gassing(0.02, 11, 2.23, 0.06, 20))),
    /** Acid held in an absorbent glass mat, sealed by a valve. */
    AGM(new ChemistryConstants(
            6,
            new RestVoltage.Line(11.90, 12.90, 0.0013),
            new ChemistryConstants.Discharge(0.40, 0.07, 0.007, 15_000, 0.5, 0.006, 0),
            new ChemistryConstants.Charge(0.7, 15, 0.1),
            new ChemistryConstants.Gassing(0.02, 11, 2.23, 0.06, 20))),
    /**
     * Lithium iron phosphate with a protection of its own, which is not part of the model here. Rest voltage: public
     * chart of 12.8 V packs. Not gassing.
     */
    LFP(new ChemistryConstants(
            4,
            new RestVoltage.Table(
                    List.of(0.0, 0.1, 0.2, 0.3, 0.4, 0.7, 0.9, 0.99, 1.0),
                    List.of(10.0, 12.0, 12.8, 13.0, 13.2, 13.3, 13.4, 13.6, 13.6)),
            new ChemistryConstants.Discharge(0.10, 0, 1, 15_000, 0, 0, 1.62e-4),
            new ChemistryConstants.Charge(0.05, 15, 1),
            ChemistryConstants.Gassing.NONE));

    @SuppressWarnings("ImmutableEnumChecker") // numbers and an immutable curve
    private final ChemistryConstants constants;

    Chemistry(ChemistryConstants constants) {
        this.constants = constants;
    }

    /** Returns the constants that every battery of this kind shares. */
    public ChemistryConstants constants() {
        return constants;
    }
}
