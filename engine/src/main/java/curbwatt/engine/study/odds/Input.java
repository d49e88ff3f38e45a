package curbwatt.engine.study.odds;

import curbwatt.engine.scene.Phase;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.AirShift;
import curbwatt.engine.study.AlternatorHeat;
import curbwatt.engine.study.BatteryHealth;
import curbwatt.engine.study.LoadScale;
import curbwatt.engine.study.SceneLength;
import curbwatt.engine.study.SensorError;
import curbwatt.engine.study.Variation;
import curbwatt.engine.study.odds.Spread.Shape;

/**
 * A figure that nobody knows exactly. Each is spread about what the scenario says, as a factor on it or a difference
 * from it; where no source is named the usual spread is common practice.
 */
public enum Input {
    /**
     * Capacity of the batteries over what the scenario says; their resistance goes by its reciprocal, so that a battery
     * that has lost capacity has gained resistance.
     */
    BATTERY_HEALTH,
    /** Air and batteries are so much warmer than the scenario says (K). */
    TEMPERATURE,
    /** Current of all loads over what their labels say. */
    LOADS,
    /** What a hot alternator still delivers over what the scenario says. */
    ALTERNATOR_HEAT,
    /**
     * What every cutoff reads too much (V): limits alone are known, and then every value between them is taken to be as
     * likely (JCGM 100:2008, 4.3.7).
     */
    SENSOR,
    /** Length of the phases at the scene, standing with equipment in use, over what the scenario says. */
    SCENE_LENGTH;

    /** How it is spread where nothing else is said. */
    public Spread usual() {
        return switch (this) {
            case BATTERY_HEALTH -> new Spread(Shape.NORMAL, 1, 0.1, 0.6, 1.15, "");
            case TEMPERATURE -> new Spread(Shape.NORMAL, 0, 4, -12, 12, "K");
            case LOADS, ALTERNATOR_HEAT -> new Spread(Shape.NORMAL, 1, 0.05, 0.85, 1.15, "");
            case SENSOR -> new Spread(Shape.UNIFORM, 0, 0.05, -0.1, 0.1, "V");
            case SCENE_LENGTH -> new Spread(Shape.TRIANGULAR, 1, 0.15, 0.75, 1.5, "");
        };
    }

    /** Whether the vehicle and the scene have it at all. */
    public boolean isIn(Simulation base) {
        return switch (this) {
            case ALTERNATOR_HEAT ->
                base.vehicle().alternator().isPresent()
                        && base.scene().phases().stream()
                                .anyMatch(phase -> phase.mode().isRunning());
            case SENSOR -> !base.vehicle().cutoffs().isEmpty();
            case SCENE_LENGTH -> base.scene().phases().stream().anyMatch(Input::isAtScene);
            default -> true;
        };
    }

    /** What a value of it changes. */
    public Variation variation(double value) {
        return switch (this) {
            case BATTERY_HEALTH -> new BatteryHealth(value, 1 / value);
            case TEMPERATURE -> new AirShift(value);
            case LOADS -> new LoadScale(value);
            case ALTERNATOR_HEAT -> new AlternatorHeat(value);
            case SENSOR -> new SensorError(value);
            case SCENE_LENGTH -> new SceneLength(value, Input::isAtScene);
        };
    }

    /** Whether a phase is one whose length nobody knows: the vehicle stands with its equipment in use. */
    static boolean isAtScene(Phase phase) {
        return switch (phase.mode()) {
            case IDLING, OFF -> true;
            case DRIVING, PARKED -> false;
        };
    }
}
