package curbwatt.engine.days;

import java.util.List;
import java.util.Optional;

/**
 * Where a battery's charge is going, week by week: the straight line of least squares through its charge at the end of
 * each repeat of the pattern, over the second half of the repeats.
 *
 * <p>Like is compared with like, the end of one repeat with the end of another; and the first half, in which a battery
 * that started full comes down to where its duty keeps it, is left out.
 *
 * @param weeklyFraction change of the state of charge in seven days; negative: it creeps down
 * @param fromDay day whose end is the first on the line
 * @param toDay day whose end is the last
 */
public record Trend(double weeklyFraction, int fromDay, int toDay) {

    /** A change smaller than this either way is none: 5 % in a year; our judgement. */
    public static final double LEVEL_WEEKLY_FRACTION = 0.001;

    private static final int DAYS_PER_WEEK = 7;

    /**
     * The trend of a record.
     *
     * @param endChargeFractions state of charge at the end of each day
     * @param patternDays length of the pattern (days), from 1
     * @return empty if the record holds fewer than two repeats in its second half
     */
    static Optional<Trend> of(List<Double> endChargeFractions, int patternDays) {
        int repeats = endChargeFractions.size() / patternDays;
        int first = repeats / 2 + 1;
        int points = repeats - first + 1;
        if (points < 2) {
            return Optional.empty();
        }
        double middle = 0.5 * (first + repeats);
        double slope = 0;
        double spread = 0;
        for (int repeat = first; repeat <= repeats; repeat++) {
            double away = repeat - middle;
            slope += away * endChargeFractions.get(repeat * patternDays - 1);
            spread += away * away;
        }
        return Optional.of(
                new Trend(slope / spread * DAYS_PER_WEEK / patternDays, first * patternDays, repeats * patternDays));
    }

    /** Whether the charge goes down. */
    public boolean isDown() {
        return weeklyFraction < -LEVEL_WEEKLY_FRACTION;
    }
}
