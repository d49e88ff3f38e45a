package curbwatt.engine.wiring;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** A conductor size that is sold. */
public sealed interface WireSize permits WireGauge, VehicleCable, MetricSize {

    /** Returns the size as it stands on the drum, for example "AWG 2/0" or "16 mm²". */
    String label();

    /** Returns the area of solid copper that conducts as well, mm². */
    double areaMm2();

    /** Returns the gauges of vehicle cable, thinnest first. */
    static List<WireSize> vehicleCables() {
        return VehicleCable.NUMBERS.stream()
                .map(number -> (WireSize) new VehicleCable(number))
                .toList();
    }

    /** Returns the gauges by their geometric area from 20 to 4/0, thinnest first. */
    static List<WireSize> gauges() {
        return IntStream.of(20, 18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 0, -1, -2, -3)
                .mapToObj(number -> (WireSize) new WireGauge(number))
                .toList();
    }

    /** Returns the metric sizes, thinnest first. */
    static List<WireSize> metric() {
        return DoubleStream.of(MetricSize.sizesMm2())
                .mapToObj(nominalMm2 -> (WireSize) new MetricSize(nominalMm2))
                .toList();
    }
}
