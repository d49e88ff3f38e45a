package curbwatt.scenarios.file;

import java.util.List;
import java.util.Optional;

/**
 * By what ways of standing are compared.
 *
 * @param place where it stands
 * @param scenesPerYear how many such scenes a year has
 * @param engineStages stages that are on while the engine runs alone
 * @param currency what the currency of the prices is called
 * @param fuelPricePerLitre price of fuel
 * @param wearPricePerHour wear and service of the engine for a running hour
 * @param wearPricePerStart wear for a start
 * @param idleControlPrice price of an idle control, fitted
 * @param automaticStartPrice price of an automatic start, fitted
 * @param deviceYears how long a device is used (years)
 */
public record IdleEntry(
        Place place,
        Optional<Double> scenesPerYear,
        List<String> engineStages,
        Optional<String> currency,
        Optional<Double> fuelPricePerLitre,
        Optional<Double> wearPricePerHour,
        Optional<Double> wearPricePerStart,
        Optional<Double> idleControlPrice,
        Optional<Double> automaticStartPrice,
        Optional<Double> deviceYears) {

    /** Takes a missing list as an empty one. */
    public IdleEntry {
        engineStages = engineStages == null ? List.of() : List.copyOf(engineStages);
    }
}
