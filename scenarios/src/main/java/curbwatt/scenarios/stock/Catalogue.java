package curbwatt.scenarios.stock;

import curbwatt.scenarios.file.Part;
import curbwatt.scenarios.file.PartKind;
import curbwatt.scenarios.json.PartReader;
import curbwatt.scenarios.problem.Nearest;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Generic parts by name. Immutable. */
public final class Catalogue {
    private final List<Part> parts;

    private Catalogue(List<Part> parts) {
        this.parts = List.copyOf(parts);
    }

    /** Returns the catalogue that ships with the program. */
    public static Catalogue shipped() {
        PartReader reader = new PartReader();
        return new Catalogue(Stream.of(PartKind.values())
                .flatMap(kind -> reader.read(kind, Resource.text("catalogue/" + kind + ".json")).stream())
                .toList());
    }

    /** Returns all parts, kind by kind, in the catalogue's order. */
    public List<Part> parts() {
        return parts;
    }

    /** Returns the parts of a kind. */
    public List<Part> parts(PartKind kind) {
        return parts.stream().filter(part -> part.kind() == kind).toList();
    }

    /** Returns the part of a name. */
    public Optional<Part> find(String name) {
        return parts.stream().filter(part -> part.name().equals(name)).findFirst();
    }

    /** Returns names of parts of a kind that are near a name, nearest first, three at most. */
    public List<String> nearest(PartKind kind, String name) {
        return Nearest.to(name, parts(kind).stream().map(Part::name).toList());
    }
}
