package curbwatt.engine.study.idle.money;

import curbwatt.engine.quantity.Require;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A way of standing, as an offer: what a scene takes, and what has to be bought for it.
 *
 * @param usage what a scene takes
 * @param deviceMoney price of its device; 0: it needs none
 */
public record Offer(Usage usage, double deviceMoney) {

    /** Refuses a negative price. */
    public Offer {
        Objects.requireNonNull(usage, "usage");
        Require.inside("deviceMoney", deviceMoney, 0, 1e9, "");
    }

    /** What a year costs: its scenes, and the year's share of the device. */
    public double yearMoney(Prices prices, double scenesPerYear) {
        return scenesPerYear * prices.sceneMoney(usage) + deviceMoney / prices.deviceYears();
    }

    /**
     * Scenes per year from which on this costs less than another, or up to which it does, if that is so: where the two
     * cost the same. Empty: one of them costs less at any number.
     */
    public OptionalDouble evenScenesPerYear(Offer other, Prices prices) {
        double moreDevice = (deviceMoney - other.deviceMoney) / prices.deviceYears();
        double lessPerScene = prices.sceneMoney(other.usage) - prices.sceneMoney(usage);
        return positive(moreDevice / lessPerScene);
    }

    /** Price of fuel per litre at which the two cost the same; empty: there is none. */
    public OptionalDouble evenFuelPrice(Offer other, Prices prices, double scenesPerYear) {
        Prices free = prices.withFuel(0);
        double moreBesideFuel = yearMoney(free, scenesPerYear) - other.yearMoney(free, scenesPerYear);
        double lessLitres = scenesPerYear
                * (other.usage.fuelLitres().orElse(0) - usage.fuelLitres().orElse(0));
        return positive(moreBesideFuel / lessLitres);
    }

    /** Price of this device up to which this costs less than another; empty: even as a gift it does not. */
    public OptionalDouble evenDeviceMoney(Offer other, Prices prices, double scenesPerYear) {
        double gift = new Offer(usage, 0).yearMoney(prices, scenesPerYear);
        return positive((other.yearMoney(prices, scenesPerYear) - gift) * prices.deviceYears());
    }

    private static OptionalDouble positive(double value) {
        return value > 0 && Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }
}
