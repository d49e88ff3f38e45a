package curbwatt.scenarios.check;

import curbwatt.scenarios.file.AuxiliaryEntry;
import curbwatt.scenarios.file.BatteryEntry;
import curbwatt.scenarios.file.CircuitEntry;
import curbwatt.scenarios.file.LinkEntry;
import curbwatt.scenarios.file.LinkWord;
import curbwatt.scenarios.file.LoadEntry;
import curbwatt.scenarios.file.Part;
import curbwatt.scenarios.file.PartKind;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.file.StudiesEntry;
import curbwatt.scenarios.file.VehicleEntry;
import curbwatt.scenarios.problem.Quoted;
import curbwatt.scenarios.stock.Catalogue;
import java.util.List;
import java.util.Optional;

/**
 * Lays a file over the catalogue parts that it names.
 *
 * @param catalogue the parts
 * @param findings told of parts that there aren't, or of the wrong kind
 */
public record PartFilling(Catalogue catalogue, Findings findings) {

    /** Returns the file with every figure that its parts supply. */
    public ScenarioFile fill(ScenarioFile file) {
        return new ScenarioFile(
                file.place(),
                file.title(),
                file.description(),
                file.vehicle().map(this::vehicle),
                file.scene(),
                file.requirements(),
                file.studies().map(this::studies),
                file.trace());
    }

    private StudiesEntry studies(StudiesEntry entry) {
        return new StudiesEntry(
                entry.place(),
                entry.settings(),
                entry.size()
                        .map(size -> size.offering(
                                size.labels().stream().map(this::battery).toList())),
                entry.idle(),
                entry.odds(),
                entry.recharge());
    }

    private VehicleEntry vehicle(VehicleEntry entry) {
        return new VehicleEntry(
                entry.place(),
                entry.name(),
                entry.battery().map(this::battery),
                entry.auxiliary()
                        .map(auxiliary -> new AuxiliaryEntry(
                                auxiliary.place(),
                                auxiliary.battery().map(this::battery),
                                auxiliary.link().map(this::link))),
                entry.alternator()
                        .map(alternator -> part(alternator.place(), alternator.part(), PartKind.ALTERNATOR)
                                .flatMap(Part::alternator)
                                .map(alternator::over)
                                .orElse(alternator)),
                entry.circuits().stream().map(this::circuit).toList(),
                entry.cutoffs(),
                entry.starter()
                        .map(starter -> part(starter.place(), starter.part(), PartKind.STARTER)
                                .flatMap(Part::starter)
                                .map(starter::over)
                                .orElse(starter)),
                entry.idleControl(),
                entry.automaticStart(),
                entry.engine(),
                entry.underHood());
    }

    private BatteryEntry battery(BatteryEntry battery) {
        return part(battery.place(), battery.part(), PartKind.BATTERY)
                .flatMap(Part::battery)
                .map(battery::over)
                .orElse(battery);
    }

    private LinkEntry link(LinkEntry link) {
        Optional<LinkEntry> part =
                part(link.place(), link.part(), PartKind.LINK).flatMap(Part::link);
        Optional<LinkWord> other = part.flatMap(LinkEntry::kind)
                .filter(kind -> link.kind().filter(own -> own != kind).isPresent());
        if (other.isPresent()) {
            findings.error(
                    link.place().key("kind"),
                    "The part " + Quoted.name(link.part().orElseThrow()) + " is a link of the kind "
                            + Quoted.name(other.get().toString()) + "; kind says "
                            + Quoted.name(link.kind().orElseThrow().toString()) + ".",
                    "Remove kind, or name a part of that kind.");
            findings.spoil(link.place());
            return link;
        }
        return part.map(link::over).orElse(link);
    }

    private CircuitEntry circuit(CircuitEntry circuit) {
        List<LoadEntry> loads = circuit.loads().stream()
                .map(load -> part(load.place(), load.part(), PartKind.LOAD)
                        .flatMap(Part::load)
                        .map(load::over)
                        .orElse(load))
                .toList();
        return new CircuitEntry(
                circuit.place(),
                circuit.name(),
                circuit.node(),
                circuit.feed(),
                circuit.fuse(),
                circuit.minimumLoad(),
                loads);
    }

    private Optional<Part> part(Place entry, Optional<String> name, PartKind wanted) {
        if (name.isEmpty()) {
            return Optional.empty();
        }
        Place place = entry.key("part");
        Optional<Part> part = catalogue.find(name.get());
        if (part.isPresent() && part.get().kind() == wanted) {
            return part;
        }
        List<String> nearest = catalogue.nearest(wanted, name.get());
        List<String> all = catalogue.parts(wanted).stream().map(Part::name).toList();
        findings.error(
                place,
                part.map(other -> "The part " + Quoted.name(name.get()) + " is of the kind '" + other.kind()
                                + "'; here stands one of the kind '" + wanted + "'.")
                        .orElse("The catalogue has no part " + Quoted.name(name.get()) + "."),
                nearest.isEmpty()
                        ? "Parts of the kind '" + wanted + "': " + Quoted.list(all) + "."
                        : Quoted.didYouMean(nearest) + "The catalogue has " + all.size() + " parts of the kind '"
                                + wanted + "'.");
        findings.spoil(place);
        return Optional.empty();
    }
}
