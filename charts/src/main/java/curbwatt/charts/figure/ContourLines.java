package curbwatt.charts.figure;

import java.awt.geom.Point2D;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Lines along which a quantity given at the points of a grid has a value, straight between neighbours.
 *
 * @param columns number of columns
 * @param rows number of rows
 * @param value the quantity at a column and a row; not a number: unknown there, and no line near it
 */
record ContourLines(int columns, int rows, Grid value) {

    /** A quantity on a grid. */
    interface Grid {
        double at(int column, int row);
    }

    private record Segment(Point2D from, Point2D to) {}

    /** The lines of a value, each from one end to the other; x is the column, y the row. */
    List<List<Point2D>> at(double level) {
        List<Segment> segments = new ArrayList<>();
        for (int column = 0; column + 1 < columns; column++) {
            for (int row = 0; row + 1 < rows; row++) {
                square(column, row, level, segments);
            }
        }
        return joined(segments);
    }

    /** The pieces within one square, by where its edges are crossed. */
    private void square(int column, int row, double level, List<Segment> segments) {
        List<Point2D> crossings = new ArrayList<>();
        int[][] corners = {{0, 0}, {1, 0}, {1, 1}, {0, 1}};
        for (int i = 0; i < 4; i++) {
            int[] from = corners[i];
            int[] to = corners[(i + 1) % 4];
            double one = value.at(column + from[0], row + from[1]);
            double other = value.at(column + to[0], row + to[1]);
            if (Double.isNaN(one) || Double.isNaN(other)) {
                return;
            }
            if ((one < level) != (other < level)) {
                double share = (level - one) / (other - one);
                crossings.add(new Point2D.Double(
                        column + from[0] + share * (to[0] - from[0]), row + from[1] + share * (to[1] - from[1])));
            }
        }
        for (int i = 0; i + 1 < crossings.size(); i += 2) {
            segments.add(new Segment(crossings.get(i), crossings.get(i + 1)));
        }
    }

    private static List<List<Point2D>> joined(List<Segment> segments) {
        List<Segment> left = new ArrayList<>(segments);
        List<List<Point2D>> lines = new ArrayList<>();
        while (!left.isEmpty()) {
            Segment first = left.remove(0);
            Deque<Point2D> line = new ArrayDeque<>(List.of(first.from(), first.to()));
            boolean grown = true;
            while (grown) {
                grown = false;
                for (int i = 0; i < left.size() && !grown; i++) {
                    grown = extend(line, left.get(i));
                    if (grown) {
                        left.remove(i);
                    }
                }
            }
            lines.add(List.copyOf(line));
        }
        return lines;
    }

    private static boolean extend(Deque<Point2D> line, Segment piece) {
        if (near(line.getLast(), piece.from())) {
            line.addLast(piece.to());
        } else if (near(line.getLast(), piece.to())) {
            line.addLast(piece.from());
        } else if (near(line.getFirst(), piece.from())) {
            line.addFirst(piece.to());
        } else if (near(line.getFirst(), piece.to())) {
            line.addFirst(piece.from());
        } else {
            return false;
        }
        return true;
    }

    private static boolean near(Point2D one, Point2D other) {
        return Math.abs(one.getX() - other.getX()) < 1e-9 && Math.abs(one.getY() - other.getY()) < 1e-9;
    }
}
