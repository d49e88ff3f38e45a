package curbwatt.scenarios.file;

import java.util.List;
import java.util.stream.Stream;

/** What joins the two nodes, as the file spells it, and the keys that go with it. */
public enum LinkWord {
    /** A cable. */
    SOLID("solid"),
    /** A relay that senses charging. */
    CHARGE_RELAY("charge relay"),
    /** A diode towards the equipment. */
    DIODE("diode"),
    /** A charger with a regulated output. */
    DC_DC_CHARGER("dc-dc charger");

    private final String word;

    LinkWord(String word) {
        this.word = word;
    }

    /** Returns the keys that a link of this kind can't do without. */
    public List<String> needed() {
        return switch (this) {
            case SOLID -> List.of("resistanceMilliohm");
            case CHARGE_RELAY -> List.of("resistanceMilliohm", "closeV", "openV");
            case DIODE -> List.of("resistanceMilliohm", "forwardV");
            case DC_DC_CHARGER -> List.of("limitA", "outputV", "efficiencyPercent", "startV", "stopV");
        };
    }

    /** Returns all keys that say something about a link of this kind. */
    public List<String> keys() {
        List<String> optional = switch (this) {
            case SOLID, DIODE -> List.of();
            case CHARGE_RELAY -> List.of("closeDelayS", "openDelayS");
            case DC_DC_CHARGER -> List.of("startDelayS", "stopDelayS");
        };
        return Stream.concat(needed().stream(), optional.stream()).toList();
    }

    @Override
    public String toString() {
        return word;
    }
}
