package curbwatt.scenarios.file;

import com.fasterxml.jackson.annotation.JsonCreator;

/**
 * A place in a JSON document.
 *
 * @param pointer JSON pointer (RFC 6901); empty: the whole document
 */
public record Place(String pointer) {

    /** The whole document. */
    public static final Place ROOT = new Place("");

    /** Returns the place of a pointer. */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public static Place of(String pointer) {
        return new Place(pointer);
    }

    /** Returns the place of a key in the object here. */
    public Place key(String key) {
        return new Place(pointer + "/" + key.replace("~", "~0").replace("/", "~1"));
    }

    /** Returns the place of an entry in the list here, counted from 0. */
    public Place item(int index) {
        return new Place(pointer + "/" + index);
    }

    /** Returns the place that this one is a key or an entry of; the whole document is its own parent. */
    public Place parent() {
        return pointer.isEmpty() ? this : new Place(pointer.substring(0, pointer.lastIndexOf('/')));
    }

    /** Returns the last key, or the last index as text; empty for the whole document. */
    public String name() {
        return pointer.substring(pointer.lastIndexOf('/') + 1)
                .replace("~1", "/")
                .replace("~0", "~");
    }

    /** Whether this place is the other one or lies inside it. */
    public boolean isInside(Place other) {
        return pointer.equals(other.pointer) || pointer.startsWith(other.pointer + "/");
    }

    /** Returns the place in a reader's spelling, {@code vehicle.circuits[2].name}. */
    public String path() {
        if (pointer.isEmpty()) {
            return "";
        }
        String before = parent().path();
        String name = name();
        if (!name.isEmpty() && name.chars().allMatch(Character::isDigit)) {
            return before + "[" + name + "]";
        }
        return before.isEmpty() ? name : before + "." + name;
    }
}
