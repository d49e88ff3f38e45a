package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * A device that starts the stopped engine for the battery, and stops it again.
 *
 * @param place where it stands
 * @param name as the user calls it
 * @param senseAtNode node at which it reads the voltage
 * @param startBelowV voltage below which it starts (V)
 * @param startDelayS unbroken time there before it does (s)
 * @param minimumRunMin least running time (min)
 * @param stopBelowChargeA charging current below which the battery counts as charged (A)
 * @param stopDelayS unbroken time there before it stops (s)
 * @param stopAfterMin longest running time (min)
 * @param runRpm engine speed while it runs (1/min)
 */
public record AutomaticStartEntry(
        Place place,
        Optional<String> name,
        Optional<NodeWord> senseAtNode,
        Optional<Double> startBelowV,
        Optional<Double> startDelayS,
        Optional<Double> minimumRunMin,
        Optional<Double> stopBelowChargeA,
        Optional<Double> stopDelayS,
        Optional<Double> stopAfterMin,
        Optional<Double> runRpm) {}
