package curbwatt.engine.sizing;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.label.LabelTestRun;
import curbwatt.engine.numeric.LinearTable;
import curbwatt.engine.quantity.Require;
import java.util.List;
import java.util.Objects;

/** Rated capacity that each ampere needs if it is to flow for a time: the Kt of the sizing methods (Ah/A). */
public sealed interface CapacityFactor {

    /**
     * Capacity for each ampere.
     *
     * @param timeS how long the ampere flows, from full to the end voltage (s), above 0
     * @return rated ampere-hours for each ampere (h)
     */
    double perAmpereH(double timeS);

    /**
     * Factors from a table, a straight line between two points.
     *
     * @param table factor (h) against time (s), times rising
     */
    record Tabled(LinearTable table) implements CapacityFactor {

        /** Refuses no table. */
        public Tabled {
            Objects.requireNonNull(table, "table");
        }

        /**
         * Factors from a maker's table of discharge currents: rated capacity over current.
         *
         * @param ratedAh rated capacity (Ah)
         * @param timesS times to the end voltage, rising (s)
         * @param currentsA current that the battery gives for each (A)
         */
        public static Tabled ofCurrents(double ratedAh, List<Double> timesS, List<Double> currentsA) {
            Require.positive("ratedAh", ratedAh, "Ah");
            return new Tabled(new LinearTable(
                    timesS,
                    currentsA.stream().map(currentA -> ratedAh / currentA).toList()));
        }

        @Override
        public double perAmpereH(double timeS) {
            return table.at(timeS);
        }
    }

    /**
     * Factors of a battery of our own: what a discharge table of it would say. Independent of its size, for a battery
     * twice as large is two side by side.
     *
     * @param battery the battery
     * @param temperatureC its temperature (°C)
     * @param endV voltage at which it counts as empty (V)
     */
    record Modelled(Battery battery, double temperatureC, double endV) implements CapacityFactor {

        /** Refuses no battery. */
        public Modelled {
            Objects.requireNonNull(battery, "battery");
        }

        @Override
        public double perAmpereH(double timeS) {
            return battery.parameters().ratedC20Ah() / LabelTestRun.crankingA(battery, temperatureC, endV, timeS);
        }
    }
}
