package curbwatt.scenarios.file;

import java.util.List;

/** How a battery works, as the file spells it, and the label that goes with it. */
public enum ChemistryWord {
    /** Lead, liquid acid. */
    FLOODED("flooded"),
    /** Lead, acid in an absorbent glass mat. */
    AGM("agm"),
    /** Lithium iron phosphate. */
    LFP("lfp");

    private final String word;

    ChemistryWord(String word) {
        this.word = word;
    }

    /** Whether its plates are lead. */
    public boolean isLead() {
        return this != LFP;
    }

    /** Returns the keys of the label that a battery of this chemistry can't do without. */
    public List<String> needed() {
        return isLead() ? List.of("c20Ah") : List.of("capacityAh", "resistanceMilliohm");
    }

    /** Returns all keys of the label of this chemistry. */
    public List<String> labelKeys() {
        return isLead()
                ? List.of("c20Ah", "reserveMin", "coldCrankingA")
                : List.of("capacityAh", "resistanceMilliohm", "continuousA");
    }

    @Override
    public String toString() {
        return word;
    }
}
