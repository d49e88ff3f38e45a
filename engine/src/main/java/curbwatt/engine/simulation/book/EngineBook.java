package curbwatt.engine.simulation.book;

import curbwatt.engine.powertrain.FuelRate;
import curbwatt.engine.result.EngineSummary;
import curbwatt.engine.simulation.part.EngineState;
import curbwatt.engine.simulation.part.OperatingPoint;
import java.util.Optional;
import java.util.OptionalDouble;

/** Adds up what the engine does. */
public final class EngineBook {

    private static final double SECONDS_PER_HOUR = 3600;

    private final Optional<FuelRate> fuel;
    private double runS;
    private double litres;
    private int starts;

    public EngineBook(Optional<FuelRate> fuel) {
        this.fuel = fuel;
    }

    public void started() {
        starts++;
    }

    /** Adds so much time at the mean of the rates at two instants. */
    void add(double weightS, double fromS, double toS, OperatingPoint start, OperatingPoint end, EngineState engine) {
        if (!engine.runs()) {
            return;
        }
        runS += weightS;
        if (fuel.isPresent()) {
            double rate = fuel.get().litresPerH(engine.rpm(fromS), watts(start))
                    + fuel.get().litresPerH(engine.rpm(toS), watts(end));
            litres += 0.5 * rate * weightS / SECONDS_PER_HOUR;
        }
    }

    private static double watts(OperatingPoint point) {
        return point.starter.nodeV * point.starter.sourceA;
    }

    public double runS() {
        return runS;
    }

    public double litres() {
        return litres;
    }

    public EngineSummary summary(double raisedS, int raises) {
        return new EngineSummary(
                runS, raisedS, starts, raises, fuel.isPresent() ? OptionalDouble.of(litres) : OptionalDouble.empty());
    }
}
