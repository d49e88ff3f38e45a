package curbwatt.scenarios.check;

import curbwatt.engine.study.odds.Input;
import curbwatt.engine.study.odds.Spread;
import curbwatt.engine.study.odds.Spread.Shape;
import curbwatt.scenarios.file.OddsEntry;
import curbwatt.scenarios.file.SpreadEntry;
import java.util.Optional;

/**
 * An entry's figures in the engine's unit, the usual ones where it leaves one out.
 *
 * @param entry the entry
 * @param usual how the input is spread where nothing is said
 */
public record SpreadFigures(SpreadEntry entry, Spread usual) {

    /** What the file says of an input. */
    public static Optional<SpreadFigures> of(OddsEntry odds, Input input) {
        Optional<? extends SpreadEntry> entry = switch (input) {
            case BATTERY_HEALTH -> odds.batteryHealth();
            case TEMPERATURE -> odds.temperature();
            case LOADS -> odds.loadCurrent();
            case ALTERNATOR_HEAT -> odds.alternatorHeat();
            case SENSOR -> odds.sensor();
            case SCENE_LENGTH -> odds.sceneLength();
        };
        return entry.map(said -> new SpreadFigures(said, input.usual()));
    }

    /** The shape. */
    public Shape shape() {
        return entry.distribution().map(word -> Shape.valueOf(word.name())).orElse(usual.shape());
    }

    /** Most likely value. */
    public double likeliest() {
        return entry.likeliest().map(this::scaled).orElse(usual.likeliest());
    }

    /** Least value. */
    public double from() {
        return shape() == Shape.FIXED
                ? likeliest()
                : entry.from().map(this::scaled).orElse(usual.from());
    }

    /** Greatest value. */
    public double to() {
        return shape() == Shape.FIXED
                ? likeliest()
                : entry.to().map(this::scaled).orElse(usual.to());
    }

    /** The spread. */
    public Spread spread() {
        return new Spread(
                shape(), likeliest(), entry.sd().map(this::scaled).orElse(usual.sd()), from(), to(), usual.unit());
    }

    private double scaled(double written) {
        return written * entry.scale();
    }
}
