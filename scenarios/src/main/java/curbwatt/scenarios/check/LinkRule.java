package curbwatt.scenarios.check;

import curbwatt.scenarios.file.AuxiliaryEntry;
import curbwatt.scenarios.file.KeyUnit;
import curbwatt.scenarios.file.LinkEntry;
import curbwatt.scenarios.file.LinkWord;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.file.VehicleEntry;
import curbwatt.scenarios.problem.Quoted;
import java.util.Optional;

/** A link has the keys of its kind, all that it needs, and levels in order. */
final class LinkRule implements Rule {
    private static final double LEAST_CONTACT_MILLIOHM = 0.1;
    private static final double MOST_CONTACT_MILLIOHM = 1000;

    @Override
    public void look(ScenarioFile file, Findings findings) {
        file.vehicle()
                .flatMap(VehicleEntry::auxiliary)
                .flatMap(AuxiliaryEntry::link)
                .ifPresent(link -> link.kind().ifPresent(kind -> look(link, kind, findings)));
    }

    private static void look(LinkEntry link, LinkWord kind, Findings findings) {
        link.figures().forEach((key, value) -> {
            if (value.isPresent() && !kind.keys().contains(key)) {
                findings.error(
                        link.place().key(key),
                        key + " says nothing about a link of the kind " + Quoted.name(kind.toString()) + ".",
                        "Remove it; such a link has " + String.join(", ", kind.keys()) + ".");
            }
            if (value.isEmpty() && kind.needed().contains(key)) {
                String unit = KeyUnit.of(link.place().key(key));
                findings.error(
                        link.place().key(key),
                        "A link of the kind " + Quoted.name(kind.toString()) + " needs " + key + " (" + unit + ").",
                        "Add it, or name a catalogue part with \"part\".");
            }
        });
        contact(link, kind, findings);
        falls(link.place(), "closeV", link.closeV(), "openV", link.openV(), findings);
        falls(link.place(), "startV", link.startV(), "stopV", link.stopV(), findings);
    }

    private static void contact(LinkEntry link, LinkWord kind, Findings findings) {
        if (kind == LinkWord.SOLID || link.resistanceMilliohm().isEmpty()) {
            return;
        }
        double milliohm = link.resistanceMilliohm().get();
        if (milliohm < LEAST_CONTACT_MILLIOHM || milliohm > MOST_CONTACT_MILLIOHM) {
            findings.error(
                    link.place().key("resistanceMilliohm"),
                    "resistanceMilliohm is " + Shown.number(milliohm) + " mΩ for a link of the kind "
                            + Quoted.name(kind.toString()) + ".",
                    "Allowed is 0.1 to 1000 mΩ, contact or diode and cable together.");
        }
    }

    /** The level that ends something lies below the one that begins it. */
    private static void falls(
            Place link, String begins, Optional<Double> beginV, String ends, Optional<Double> endV, Findings findings) {
        if (beginV.isPresent() && endV.isPresent() && endV.get() >= beginV.get()) {
            findings.error(
                    findings.isWritten(link.key(ends)) ? link.key(ends) : link.key(begins),
                    ends + " is " + Shown.number(endV.get()) + " V, not below " + begins + ", "
                            + Shown.number(beginV.get()) + " V.",
                    "It would switch back and forth; half a volt between them is common.");
        }
    }
}
