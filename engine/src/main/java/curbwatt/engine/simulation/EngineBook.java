package curbwatt.engine.simulation;

import curbwatt.engine.powertrain.FuelRate;
import curbwatt.engine.result.EngineSummary;
import java.util.Optional;
import java.util.OptionalDouble;

/** Adds up what the engine does. */
final class EngineBook {

    private static final double SECONDS_PER_HOUR = 3600;

    private final Optional<FuelRate> fuel;
    private double runS;
    private double litres;
    private int starts;

    EngineBook(Optional<FuelRate> fuel) {
        this.fuel = fuel;
    }

    void started() {
        starts++;
    }

    void add(double fromS, double lengthS, OperatingPoint start, OperatingPoint end, EngineState engine) {
        if (!engine.runs()) {
            return;
        }
        runS += lengthS;
        if (fuel.isPresent()) {
            double rate = fuel.get().litresPerH(engine.rpm(fromS), watts(start))
                    + fuel.get().litresPerH(engine.rpm(fromS + lengthS), watts(end));
            litres += 0.5 * rate * lengthS / SECONDS_PER_HOUR;
        }
    }

    private static double watts(OperatingPoint point) {
        return point.starter.nodeV * point.starter.sourceA;
    }

    double runS() {
        return runS;
    }

    double litres() {
        return litres;
    }

    EngineSummary summary(double timeS, EngineWatch watch) {
        return new EngineSummary(
                runS,
                watch.raisedS(timeS),
                starts,
                watch.raises(),
                fuel.isPresent() ? OptionalDouble.of(litres) : OptionalDouble.empty());
    }
}
