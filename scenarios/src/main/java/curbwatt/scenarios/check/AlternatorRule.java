package curbwatt.scenarios.check;

import curbwatt.engine.alternator.AlternatorLabel;
import curbwatt.scenarios.file.AlternatorEntry;
import curbwatt.scenarios.file.OutputEntry;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.ScenarioFile;

/** Figures of an alternator that contradict each other. */
final class AlternatorRule implements Rule {

    @Override
    public void look(ScenarioFile file, Findings findings) {
        file.vehicle().flatMap(vehicle -> vehicle.alternator()).ifPresent(alternator -> {
            if (alternator.table().isEmpty()) {
                label(alternator, findings);
            } else {
                table(alternator, findings);
            }
            setPoint(alternator, findings);
        });
    }

    private static void label(AlternatorEntry alternator, Findings findings) {
        double idleRpm = alternator.idleRpm().orElse(AlternatorLabel.IDLE_RPM);
        double ratedRpm = alternator.ratedRpm().orElse(AlternatorLabel.RATED_RPM);
        if (ratedRpm <= idleRpm) {
            findings.error(
                    alternator.place().key("ratedRpm"),
                    "ratedRpm is " + Shown.number(ratedRpm) + " /min, not above idleRpm, " + Shown.number(idleRpm)
                            + " /min.",
                    "The label's second figure belongs to the higher speed.");
        }
        if (alternator.idleA().isPresent() && alternator.ratedA().isPresent()) {
            double idleA = alternator.idleA().get();
            double ratedA = alternator.ratedA().get();
            if (idleA >= ratedA) {
                findings.error(
                        written(alternator.place(), "idleA", "ratedA", findings),
                        "idleA is " + Shown.number(idleA) + " A, not below ratedA, " + Shown.number(ratedA) + " A.",
                        "Output grows with speed; are the two figures swapped?");
            }
        }
    }

    private static void table(AlternatorEntry alternator, Findings findings) {
        if (findings.isTouched(alternator.place().key("table"))) {
            return;
        }
        if (findings.isWritten(alternator.place().key("table"))
                && (findings.isWritten(alternator.place().key("idleA"))
                        || findings.isWritten(alternator.place().key("ratedA")))) {
            findings.warning(
                    alternator.place().key("table"),
                    "The alternator has a label and a table; the table is used.",
                    "Remove idleA and ratedA.");
        }
        for (int i = 1; i < alternator.table().size(); i++) {
            OutputEntry before = alternator.table().get(i - 1);
            OutputEntry after = alternator.table().get(i);
            rises(
                    before.shaftRpm().orElse(0.0),
                    after.shaftRpm().orElse(0.0),
                    after.place().key("shaftRpm"),
                    findings);
            if (after.outputA().orElse(0.0) < before.outputA().orElse(0.0)) {
                findings.error(
                        after.place().key("outputA"),
                        "outputA falls from " + Shown.number(before.outputA().orElse(0.0)) + " A to "
                                + Shown.number(after.outputA().orElse(0.0)) + " A.",
                        "Outputs must not fall with speed.");
            }
        }
    }

    private static void rises(double before, double after, Place place, Findings findings) {
        if (after <= before) {
            findings.error(
                    place,
                    "shaftRpm is " + Shown.number(after) + " /min after " + Shown.number(before) + " /min.",
                    "Speeds must rise from point to point.");
        }
    }

    private static void setPoint(AlternatorEntry alternator, Findings findings) {
        if (alternator.lowestSetPointV().isEmpty()
                || alternator.highestSetPointV().isEmpty()) {
            return;
        }
        double lowest = alternator.lowestSetPointV().get();
        double highest = alternator.highestSetPointV().get();
        if (highest < lowest) {
            findings.error(
                    written(alternator.place(), "highestSetPointV", "lowestSetPointV", findings),
                    "highestSetPointV is " + Shown.number(highest) + " V, below lowestSetPointV, "
                            + Shown.number(lowest) + " V.",
                    "Are the two swapped?");
        }
    }

    /** The first of two keys that the file itself has. */
    private static Place written(Place entry, String first, String second, Findings findings) {
        return findings.isWritten(entry.key(first)) ? entry.key(first) : entry.key(second);
    }
}
