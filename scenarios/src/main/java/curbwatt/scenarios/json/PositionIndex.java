package curbwatt.scenarios.json;

import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.problem.Positions;
import curbwatt.scenarios.problem.SourcePosition;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;

/** Where each key and each value of a document stands, noted while it was read. */
final class PositionIndex implements Positions {
    private final String file;
    private final Map<String, TextPosition> keys = new HashMap<>();
    private final Map<String, TextPosition> values = new HashMap<>();
    private final Map<String, String> settings = new HashMap<>();
    private final Map<String, String> numbers = new HashMap<>();

    PositionIndex(String file) {
        this.file = file;
    }

    void noteKey(Place place, TextPosition position) {
        keys.put(place.pointer(), position);
    }

    void noteValue(Place place, TextPosition position) {
        values.put(place.pointer(), position);
    }

    void noteNumber(Place place, String spelling) {
        numbers.put(place.pointer(), spelling);
    }

    /** Notes that a value was set beside the file, by what. */
    void noteSetting(Place place, String setting) {
        settings.put(place.pointer(), setting);
    }

    /** Forgets a value and everything inside it. */
    void forget(Place place) {
        Stream.of(keys, values, numbers, settings)
                .forEach(notes ->
                        notes.keySet().removeIf(pointer -> Place.of(pointer).isInside(place)));
    }

    /** Returns a number as the user wrote it. */
    String spelling(Place place) {
        return numbers.getOrDefault(place.pointer(), "");
    }

    @Override
    public SourcePosition ofValue(String pointer) {
        Place place = Place.of(pointer);
        Place there = place;
        while (!values.containsKey(there.pointer()) && !there.equals(Place.ROOT)) {
            there = there.parent();
        }
        return position(place, values.getOrDefault(there.pointer(), new TextPosition(1, 1)));
    }

    @Override
    public SourcePosition ofKey(String pointer) {
        TextPosition key = keys.get(pointer);
        return key == null ? ofValue(pointer) : position(Place.of(pointer), key);
    }

    @Override
    public boolean has(String pointer) {
        return values.containsKey(pointer);
    }

    private SourcePosition position(Place place, TextPosition position) {
        for (Place there = place; !there.equals(Place.ROOT); there = there.parent()) {
            if (settings.containsKey(there.pointer())) {
                return new SourcePosition("setting " + settings.get(there.pointer()), 0, 0, place.path());
            }
        }
        return new SourcePosition(file, position.line(), position.column(), place.path());
    }
}
