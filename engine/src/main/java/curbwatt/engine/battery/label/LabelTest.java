package curbwatt.engine.battery.label;

/** The tests that a label's figures come from. */
public enum LabelTest {
    /** C20/20 to 10.5 V at 25 °C; the figure is the charge delivered, Ah. SAE J3012. */
    TWENTY_HOURS(25, 10.5),
    /** 25 A to 10.5 V at 27 °C (80 °F); the figure is the time, min. SAE J537. */
    RESERVE(27, 10.5),
    /** The current that leaves 7.2 V after 30 s at −18 °C (0 °F); the figure is that current, A. SAE J537. */
    COLD_CRANKING(-18, 7.2);

    /** Life of the 20 h test, h. */
    public static final double TWENTY_HOURS_H = 20;
    /** Current of the reserve test, A. */
    public static final double RESERVE_A = 25;
    /** Length of the cold cranking test, s. */
    public static final double CRANKING_S = 30;

    private final double temperatureC;
    private final double endV;

    LabelTest(double temperatureC, double endV) {
        this.temperatureC = temperatureC;
        this.endV = endV;
    }

    /** Returns the battery temperature of the test, °C. */
    public double temperatureC() {
        return temperatureC;
    }

    /** Returns the terminal voltage at which the test ends, or which it must leave, V. */
    public double endV() {
        return endV;
    }
}
