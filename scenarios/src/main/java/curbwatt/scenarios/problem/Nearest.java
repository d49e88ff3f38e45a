package curbwatt.scenarios.problem;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Names close to one that is not known: what the writer may have meant. */
public final class Nearest {
    private static final int SUGGESTIONS = 3;
    private static final int CLEARLY_FARTHER = 1;

    private Nearest() {}

    /**
     * Returns the names near {@code wrong}, nearest first, three at most; ties in the order given.
     *
     * <p>Near is a name that can be reached by changing a third of the letters or less, whatever the case, or one that
     * contains what was written. Names that are clearly farther than the nearest are left out.
     */
    public static List<String> to(String wrong, Collection<String> known) {
        String low = wrong.toLowerCase(Locale.ROOT).strip();
        List<String> near = known.stream()
                .filter(name -> isNear(low, name.toLowerCase(Locale.ROOT)))
                .sorted(Comparator.comparingInt(name -> distance(low, name.toLowerCase(Locale.ROOT))))
                .toList();
        int least = near.isEmpty() ? 0 : distance(low, near.get(0).toLowerCase(Locale.ROOT));
        return near.stream()
                .filter(name -> distance(low, name.toLowerCase(Locale.ROOT)) <= least + CLEARLY_FARTHER)
                .limit(SUGGESTIONS)
                .toList();
    }

    private static boolean isNear(String wrong, String name) {
        int longest = Math.max(wrong.length(), name.length());
        return distance(wrong, name) <= Math.max(1, longest / 3) || (wrong.length() > 2 && name.contains(wrong));
    }

    /** Letters to insert, drop, replace or swap with their neighbour (optimal string alignment). */
    private static int distance(String from, String to) {
        int[][] d = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) {
            for (int j = 0; j <= to.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : cheapest(d, from, to, i, j);
            }
        }
        return d[from.length()][to.length()];
    }

    private static int cheapest(int[][] d, String from, String to, int i, int j) {
        boolean same = from.charAt(i - 1) == to.charAt(j - 1);
        int best = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + (same ? 0 : 1));
        boolean swapped =
                i > 1 && j > 1 && from.charAt(i - 1) == to.charAt(j - 2) && from.charAt(i - 2) == to.charAt(j - 1);
        return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
    }
}
