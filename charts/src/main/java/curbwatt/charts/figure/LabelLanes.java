package curbwatt.charts.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds room for labels that hang on upright lines: each stands beside its line in one of several lanes, the line
 * runs on from its lane towards the chart, and neither labels nor lines cross another label.
 */
final class LabelLanes {

    private static final double GAP = 4;

    /**
     * A label in its place.
     *
     * @param index place in the list of wishes
     * @param anchorPx where its line stands (px)
     * @param fromPx left end of the text (px)
     * @param toPx right end of the text (px)
     * @param lane 0 is the one farthest from the chart
     */
    record Place(int index, double anchorPx, double fromPx, double toPx, int lane) {
        /** The same place for another list of wishes. */
        Place of(int newIndex) {
            return new Place(newIndex, anchorPx, fromPx, toPx, lane);
        }
    }

    /**
     * What a label asks for.
     *
     * @param anchorPx where its line stands (px)
     * @param widthPx of the text (px)
     */
    record Wish(double anchorPx, double widthPx) {}

    private LabelLanes() {}

    /** Places for as many of the wishes as fit, those that come first being served first. */
    static List<Place> places(List<Wish> wishes, double fromPx, double toPx, int lanes) {
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < wishes.size(); i++) {
            place(i, wishes.get(i), fromPx, toPx, lanes, places).ifPresent(places::add);
        }
        return places;
    }

    private static Optional<Place> place(
            int index, Wish wish, double fromPx, double toPx, int lanes, List<Place> taken) {
        for (int lane = 0; lane < lanes; lane++) {
            Place right = new Place(
                    index, wish.anchorPx(), wish.anchorPx() + GAP, wish.anchorPx() + GAP + wish.widthPx(), lane);
            Place left = new Place(
                    index, wish.anchorPx(), wish.anchorPx() - GAP - wish.widthPx(), wish.anchorPx() - GAP, lane);
            if (right.toPx() <= toPx && isFree(right, taken)) {
                return Optional.of(right);
            }
            if (left.fromPx() >= fromPx && isFree(left, taken)) {
                return Optional.of(left);
            }
        }
        return Optional.empty();
    }

    private static boolean isFree(Place place, List<Place> taken) {
        return taken.stream().noneMatch(other -> collide(place, other));
    }

    private static boolean collide(Place one, Place other) {
        boolean sameLane = one.lane() == other.lane();
        boolean textsMeet = sameLane && one.fromPx() < other.toPx() + 2 * GAP && other.fromPx() < one.toPx() + 2 * GAP;
        return textsMeet || crosses(one, other) || crosses(other, one);
    }

    /** Whether the line of one runs through the text of the other, which lies nearer to the chart. */
    private static boolean crosses(Place line, Place text) {
        return line.lane() <= text.lane()
                && line.anchorPx() > text.fromPx() - GAP / 2
                && line.anchorPx() < text.toPx() + GAP / 2;
    }
}
