package curbwatt.scenarios.problem;

import java.util.Collection;
import java.util.stream.Collectors;

/** Names as they stand within a sentence. */
public final class Quoted {
    private static final int LONGEST = 60;

    private Quoted() {}

    /** Returns {@code 'name'}, shortened if it is long, without line breaks. */
    public static String name(String name) {
        String flat = name.replaceAll("\\p{Cntrl}+", " ");
        return flat.length() > LONGEST ? "'" + flat.substring(0, LONGEST) + "…'" : "'" + flat + "'";
    }

    /** Returns {@code 'a', 'b', 'c'}; {@code none} if there are none. */
    public static String list(Collection<String> names) {
        return names.isEmpty() ? "none" : names.stream().map(Quoted::name).collect(Collectors.joining(", "));
    }

    /** Returns {@code Did you mean 'a' or 'b'? }, with the space; empty if nothing is near. */
    public static String didYouMean(Collection<String> nearest) {
        return nearest.isEmpty()
                ? ""
                : nearest.stream().map(Quoted::name).collect(Collectors.joining(" or ", "Did you mean ", "? "));
    }
}
