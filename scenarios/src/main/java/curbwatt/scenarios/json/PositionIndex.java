package curbwatt.scenarios.json;

import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.problem.Positions;
import curbwatt.scenarios.problem.SourcePosition;
import java.util.HashMap;
import java.util.Map;

/** Where each key and each value of a document stands, noted while it was read. */
final class PositionIndex implements Positions {
    private final String file;
    private final Map<String, TextPosition> keys = new HashMap<>();
    private final Map<String, TextPosition> values = new HashMap<>();
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
        return new SourcePosition(file, position.line(), position.column(), place.path());
    }
}
