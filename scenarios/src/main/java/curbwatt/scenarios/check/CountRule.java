package curbwatt.scenarios.check;

import curbwatt.scenarios.file.DutyEntry;
import curbwatt.scenarios.file.LoadEntry;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.RandomDutyEntry;
import curbwatt.scenarios.file.ScenarioFile;
import java.util.Optional;

/** Several loads alike don't draw more together than one load may. */
final class CountRule implements Rule {
    private static final double MOST_ON_A = 1000;
    private static final double MOST_OTHERWISE_A = 100;

    @Override
    public void look(ScenarioFile file, Findings findings) {
        file.vehicle()
                .ifPresent(vehicle ->
                        vehicle.circuits().forEach(circuit -> circuit.loads().forEach(load -> look(load, findings))));
    }

    private static void look(LoadEntry load, Findings findings) {
        Place place = load.place();
        together(load, load.ratedCurrentA(), place.key("ratedCurrentA"), MOST_ON_A, findings);
        together(load, load.standbyCurrentA(), place.key("standbyCurrentA"), MOST_OTHERWISE_A, findings);
        Optional<Double> betweenA = load.duty().flatMap(DutyEntry::betweenCurrentA);
        together(
                load,
                load.randomDuty().flatMap(RandomDutyEntry::betweenCurrentA),
                place.key("randomDuty").key("betweenCurrentA"),
                MOST_OTHERWISE_A,
                findings);
        together(load, betweenA, place.key("duty").key("betweenCurrentA"), MOST_OTHERWISE_A, findings);
    }

    private static void together(LoadEntry load, Optional<Double> eachA, Place place, double mostA, Findings findings) {
        int count = load.count().orElse(1);
        double allA = count * eachA.orElse(0.0);
        if (allA > mostA) {
            findings.error(
                    findings.isWritten(place) ? place : load.place().key("count"),
                    count + " of " + Shown.number(eachA.orElse(0.0)) + " A each are " + Shown.number(allA)
                            + " A together.",
                    "Allowed is up to " + Shown.number(mostA) + " A for one entry. Is the current that of one?");
        }
    }
}
