package curbwatt.engine.study.settings;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The setting with the most room.
 *
 * @param cell the setting
 * @param room its room
 * @param sides what limits it on each side
 * @param range the settings round it that a device with coarse steps may choose from
 * @param neighbours the settings next to it
 */
public record Recommendation(
        Cell cell, Room room, List<SideLimit> sides, CoarseRange range, List<Neighbour> neighbours) {

    /**
     * What limits it on one side.
     *
     * @param side the side
     * @param failing the first setting on the way there that fails as the scenario stands; empty: none that was tried
     */
    public record SideLimit(Side side, Optional<Cell> failing) {

        /** Refuses missing parts. */
        public SideLimit {
            Objects.requireNonNull(side, "side");
            Objects.requireNonNull(failing, "failing");
        }
    }

    /**
     * A setting next to it.
     *
     * @param cell the setting
     * @param room its room; none if it does not even work as the scenario stands
     */
    public record Neighbour(Cell cell, Room room) {

        /** Refuses missing parts. */
        public Neighbour {
            Objects.requireNonNull(cell, "cell");
            Objects.requireNonNull(room, "room");
        }
    }

    /** Copies the lists. */
    public Recommendation {
        Objects.requireNonNull(cell, "cell");
        Objects.requireNonNull(room, "room");
        Objects.requireNonNull(range, "range");
        sides = List.copyOf(sides);
        neighbours = List.copyOf(neighbours);
    }
}
