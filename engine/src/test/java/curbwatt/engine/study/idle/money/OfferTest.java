package curbwatt.engine.study.idle.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class OfferTest {

    private static final Prices PRICES = new Prices("", 1.5, 2, 0.5, 300, 1000, 8);
    private static final Offer PLAIN = new Offer(new Usage(OptionalDouble.of(8), 4, 1), 0);
    private static final Offer DEVICE = new Offer(new Usage(OptionalDouble.of(5), 2, 5), 1000);

    @Test
    void aYearIsScenesAndTheShareOfTheDevice() {
        assertThat(PLAIN.yearMoney(PRICES, 100)).isEqualTo(100 * (8 * 1.5 + 4 * 2 + 0.5));
        assertThat(DEVICE.yearMoney(PRICES, 100)).isEqualTo(100 * (5 * 1.5 + 2 * 2 + 5 * 0.5) + 1000 / 8.0);
    }

    /** By hand: the device saves 20.5 − 14 = 6.5 a scene and costs 125 a year. */
    @Test
    void theBreakEvenIsThatOfTheHandSum() {
        assertThat(DEVICE.evenScenesPerYear(PLAIN, PRICES).orElseThrow()).isCloseTo(125 / 6.5, within(1e-9));
        assertThat(DEVICE.evenDeviceMoney(PLAIN, PRICES, 100).orElseThrow()).isCloseTo(6.5 * 100 * 8, within(1e-9));
    }

    @Test
    void atTheBreakEvenBothCostTheSame() {
        double scenes = DEVICE.evenScenesPerYear(PLAIN, PRICES).orElseThrow();
        assertThat(DEVICE.yearMoney(PRICES, scenes)).isCloseTo(PLAIN.yearMoney(PRICES, scenes), within(1e-9));
        Prices dearStarts = new Prices("", 1.5, 0, 4, 300, 1000, 8);
        double fuel = DEVICE.evenFuelPrice(PLAIN, dearStarts, 100).orElseThrow();
        assertThat(DEVICE.yearMoney(dearStarts.withFuel(fuel), 100))
                .isCloseTo(PLAIN.yearMoney(dearStarts.withFuel(fuel), 100), within(1e-9));
        double price = DEVICE.evenDeviceMoney(PLAIN, PRICES, 100).orElseThrow();
        assertThat(new Offer(DEVICE.usage(), price).yearMoney(PRICES, 100))
                .isCloseTo(PLAIN.yearMoney(PRICES, 100), within(1e-9));
    }

    @Test
    void whereOneIsAlwaysCheaperThereIsNoBreakEven() {
        Offer worse = new Offer(PLAIN.usage(), 500);
        assertThat(worse.evenScenesPerYear(PLAIN, PRICES)).isEmpty();
        assertThat(worse.evenFuelPrice(PLAIN, PRICES, 100)).isEmpty();
        assertThat(worse.evenDeviceMoney(PLAIN, PRICES, 100)).isEmpty();
    }

    @Test
    void negativePricesAreRefused() {
        assertThatThrownBy(() -> PRICES.withFuel(-1)).hasMessageContaining("fuelPricePerLitre is -1");
        assertThatThrownBy(() -> new Prices("", 1, 1, 1, 1, 1, 0)).hasMessageContaining("deviceYears is 0");
    }
}
