package curbwatt.engine.study.idle.money;

import curbwatt.engine.quantity.Require;
import java.util.Objects;

/**
 * What things cost, in one currency throughout.
 *
 * @param currency what the currency is called; may be empty
 * @param fuelMoneyPerLitre fuel, 0 or more
 * @param wearMoneyPerH wear and service of the engine for one running hour, 0 or more
 * @param wearMoneyPerStart wear of starter and battery for one start, 0 or more
 * @param idleControlMoney idle control, fitted, 0 or more
 * @param automaticStartMoney automatic start, fitted, 0 or more
 * @param deviceYears how long a device is used, 0.5 … 40
 */
public record Prices(
        String currency,
        double fuelMoneyPerLitre,
        double wearMoneyPerH,
        double wearMoneyPerStart,
        double idleControlMoney,
        double automaticStartMoney,
        double deviceYears) {

    /** Far above any price in any currency. */
    private static final double MOST_MONEY = 1e9;

    /** Refuses negative prices. */
    public Prices {
        Objects.requireNonNull(currency, "currency");
        Require.inside("fuelPricePerLitre", fuelMoneyPerLitre, 0, MOST_MONEY, "");
        Require.inside("wearPricePerHour", wearMoneyPerH, 0, MOST_MONEY, "");
        Require.inside("wearPricePerStart", wearMoneyPerStart, 0, MOST_MONEY, "");
        Require.inside("idleControlPrice", idleControlMoney, 0, MOST_MONEY, "");
        Require.inside("automaticStartPrice", automaticStartMoney, 0, MOST_MONEY, "");
        Require.inside("deviceYears", deviceYears, 0.5, 40, "");
    }

    /** The same with another price of fuel. */
    public Prices withFuel(double moneyPerLitre) {
        return new Prices(
                currency,
                moneyPerLitre,
                wearMoneyPerH,
                wearMoneyPerStart,
                idleControlMoney,
                automaticStartMoney,
                deviceYears);
    }

    /** What one scene costs. Fuel that is not known costs nothing. */
    public double sceneMoney(Usage usage) {
        return usage.fuelLitres().orElse(0) * fuelMoneyPerLitre
                + usage.engineH() * wearMoneyPerH
                + usage.starts() * wearMoneyPerStart;
    }
}
