package curbwatt.engine.battery.label;

import curbwatt.engine.battery.BatteryParameters;

/**
 * A label and the battery that passes its tests.
 *
 * @param label the label
 * @param figures the figures that the battery was fitted to, missing ones estimated
 * @param parameters the battery
 * @param reserveEstimated true if the label had no reserve capacity
 * @param coldCrankingEstimated true if the label had no cold cranking current
 * @param tests the figures that the battery reaches in the three tests
 * @param peukertResidualFraction largest relative distance of the battery's modes from its Peukert law
 */
public record FittedLabel(
        BatteryLabel label,
        LabelFigures figures,
        BatteryParameters parameters,
        boolean reserveEstimated,
        boolean coldCrankingEstimated,
        LabelFigures tests,
        double peukertResidualFraction) {}
