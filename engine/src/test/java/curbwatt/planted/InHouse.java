package curbwatt.planted;

import java.util.List;
import java.util.OptionalDouble;

/** What no module may do, and beside it what each may. */
public final class InHouse {

    private InHouse() {}

    /** Says nothing by its name. */
    public static final class LoadUtil {}

    /** Says nothing by its name. */
    public static final class LoadManager {}

    /** Says nothing by its name. */
    public static final class LoadHelper {}

    /** Says nothing by its name. */
    public static final class LoadImpl {}

    /** Says nothing by its name. */
    public static final class LoadProcessor {}

    /** Says nothing by its name. */
    public static class AbstractLoad {}

    /** Inherits. */
    public static final class Child extends AbstractLoad {}

    /** Can be changed. */
    public static final class Settable {
        /** Sets nothing. */
        public void setLevel(double levelV) {}
    }

    /** Can be changed, many times in one line. */
    public static final class FluentlySettable {
        /** Sets nothing. */
        public FluentlySettable setLevel(double levelV) {
            return this;
        }
    }

    /** Has state that all share. */
    @SuppressWarnings({"UnusedVariable", "NonFinalStaticField"})
    public static final class Shared {
        private static int count;
    }

    /** Has a number of unknown unit. */
    public record Unitless(double current) {}

    /** Has perhaps a number of unknown unit. */
    public record PerhapsUnitless(OptionalDouble current) {}

    /** Leaks. */
    @SuppressWarnings("ArrayRecordComponent")
    public record Leaking(double[] currentsA) {}

    /** Keeps every rule. */
    public record Sound(double currentA, double slopeVPerK, double fraction, List<Double> stepsA, int count) {
        /** A constant is no component. */
        public static final double LARGEST = 1.0;

        /** A set point is a noun. */
        public double setPointA() {
            return currentA;
        }
    }

    /** Keeps every rule: the unit stands beside the number. */
    public record Measured(double figure, String unit) {}

    /** Keeps every rule. */
    public static final class Refused extends IllegalArgumentException {}

    /** Keeps every rule, though its constants are classes that extend it. */
    public enum Kind {
        /** A constant with a body. */
        ONE {
            @Override
            double value() {
                return 1.0;
            }
        };

        abstract double value();
    }
}
