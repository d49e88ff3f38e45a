package curbwatt.engine.wiring;

/** A rule that a circuit is held against, and where it comes from. */
public enum WiringRule {
    /** The drop at the mean current lies within the limit. */
    DROP("drop at the mean current, of the system's voltage", "ABYC E-11: 3 % critical, 10 % other"),
    /** The wire may carry the current that warms it for good. */
    WIRE_CARRIES_LOAD(
            "root mean square current, within the wire's rating", "ABYC E-11 and 33 CFR 183.425, 105 °C insulation"),
    /** There is a fuse at the source. */
    FUSE_PRESENT("a fuse at the source", "practice of the trade"),
    /** The fuse opens before the wire is overloaded. */
    FUSE_PROTECTS_WIRE("fuse rating, within the wire's rating", "practice of the trade; wire rating by ABYC E-11"),
    /** The wire has a reserve over the fuse. */
    WIRE_EXCEEDS_FUSE("wire's rating over the fuse's, 1.25 at least", "public purchase specifications for fire trucks"),
    /** The fuse carries the current that warms it for good. */
    FUSE_CARRIES_LOAD(
            "root mean square current, of the fuse's rating in its air",
            "practice of the trade, no published source for fuses: 80 % (FAA AC 43.13-1B has 80 % for alternators)"),
    /** The fuse outlasts the peak. */
    FUSE_OUTLASTS_PEAK(
            "length of the peak, within the time before which no good fuse opens",
            "ISO 8820-3 and DIN 72581-3 times as public data sheets have them");

    private final String text;
    private final String source;

    WiringRule(String text, String source) {
        this.text = text;
        this.source = source;
    }

    /** Returns what is compared, in words. */
    public String text() {
        return text;
    }

    /** Returns where the rule comes from. */
    public String source() {
        return source;
    }
}
