package curbwatt.engine.battery;

/** Kind of battery, by how its electrolyte is held. Both are six lead-acid cells in series, nominally 12 V. */
public enum Chemistry {
    /** Liquid acid, vented or maintenance-free: the usual starter battery. */
    FLOODED(new ChemistryConstants(
            new ChemistryConstants.Rest(11.90, 12.65, 0.0013),
            new ChemistryConstants.Discharge(0.25, 0.07, 0.007, 15_000, 0.5, 0.006),
            new ChemistryConstants.Charge(1.0, 15, 0.2),
            new ChemistryConstants.Gassing(0.02, 11, 2.23, 0.06, 20))),
    /** Acid held in an absorbent glass mat, sealed by a valve. */
    AGM(new ChemistryConstants(
            new ChemistryConstants.Rest(11.90, 12.90, 0.0013),
            new ChemistryConstants.Discharge(0.40, 0.07, 0.007, 15_000, 0.5, 0.006),
            new ChemistryConstants.Charge(0.7, 15, 0.1),
            new ChemistryConstants.Gassing(0.02, 11, 2.23, 0.06, 20)));

    /** Cells in series. */
    public static final int CELLS = 6;

    @SuppressWarnings("ImmutableEnumChecker") // a record of records of numbers is immutable
    private final ChemistryConstants constants;

    Chemistry(ChemistryConstants constants) {
        this.constants = constants;
    }

    /** Returns the constants that every battery of this kind shares. */
    public ChemistryConstants constants() {
        return constants;
    }
}
