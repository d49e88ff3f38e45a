package curbwatt.engine.wiring;

import java.util.Arrays;
import java.util.Locale;

/**
 * Flexible metric conductor. Its size is a name: IEC 60228 limits the resistance, and the largest allowed for class 5
 * is 10 to 16 %
 * above what the nominal area would have.
 *
 * @param nominalMm2 size, mm²: 0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120
 */
public record MetricSize(double nominalMm2) implements WireSize {
    private static final double[] SIZE_MM2 = {0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120};
    private static final double[] MOST_MILLIOHM_PER_M = {
        39.0, 26.0, 19.5, 13.3, 7.98, 4.95, 3.30, 1.91, 1.21, 0.780, 0.554, 0.386, 0.272, 0.206, 0.161
    };

    /** Refuses sizes that are not in the table. */
    public MetricSize {
        if (Arrays.binarySearch(SIZE_MM2, nominalMm2) < 0) {
            throw new IllegalArgumentException(
                    "nominalMm2 is " + nominalMm2 + " mm², allowed is one of " + Arrays.toString(SIZE_MM2));
        }
    }

    /** Returns the largest resistance that class 5 allows at 20 °C, plain copper, Ω/m. */
    public double mostOhmPerM() {
        return MOST_MILLIOHM_PER_M[Arrays.binarySearch(SIZE_MM2, nominalMm2)] * 1e-3;
    }

    @Override
    public double areaMm2() {
        return WireMaterial.COPPER.resistivityOhmM(20) / mostOhmPerM() * 1e6;
    }

    @Override
    public String label() {
        return (nominalMm2 == Math.rint(nominalMm2)
                        ? String.format(Locale.ROOT, "%.0f", nominalMm2)
                        : Double.toString(nominalMm2))
                + " mm²";
    }

    static double[] sizesMm2() {
        return SIZE_MM2.clone();
    }
}
