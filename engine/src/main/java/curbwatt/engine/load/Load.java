package curbwatt.engine.load;

import curbwatt.engine.quantity.Require;
import java.util.Objects;
import java.util.Set;

/**
 * One consumer on a circuit.
 *
 * <p>While on it draws {@code I(V) = ratedCurrentA · (V / ratedVoltageV)^voltageExponent}, the exponential load model
 * of power-system studies: −1 constant power (switching drivers, computers, radios), 0 constant current (linear LED
 * heads), 1 resistive (heaters), about 0.55 an incandescent lamp (common practice, no published source).
 *
 * @param name unique within the vehicle
 * @param ratedCurrentA current at the rated voltage (A), 0 … 1000
 * @param ratedVoltageV voltage of the rating (V), 6 … 16
 * @param voltageExponent exponent of the current in voltage, −1 … 3
 * @param standbyCurrentA current while fed but not drawing its rated current (A), whatever the voltage, 0 … 100
 * @param dropOut when the load falls silent and when it comes back
 * @param pattern when the load is on while its stage is
 * @param stages response stages that switch the load on; empty: on whenever its circuit is fed
 * @param inrush what it draws more just after each switch-on
 * @param heads how many alike heads it stands for, 1 … 1000; they share its currents equally and switch as one
 */
public record Load(
        String name,
        double ratedCurrentA,
        double ratedVoltageV,
        double voltageExponent,
        double standbyCurrentA,
        DropOut dropOut,
        LoadPattern pattern,
        Set<String> stages,
        Inrush inrush,
        int heads) {

    /** Refuses a figure outside its range. */
    public Load {
        Objects.requireNonNull(name, "name");
        Require.inside("ratedCurrentA", ratedCurrentA, 0, 1000, "A");
        Require.inside("ratedVoltageV", ratedVoltageV, 6, 16, "V");
        Require.inside("voltageExponent", voltageExponent, -1, 3, "");
        Require.inside("standbyCurrentA", standbyCurrentA, 0, 100, "A");
        Objects.requireNonNull(dropOut, "dropOut");
        Objects.requireNonNull(pattern, "pattern");
        stages = Set.copyOf(stages);
        Objects.requireNonNull(inrush, "inrush");
        Require.inside("heads", heads, 1, 1000, "");
    }

    /** A load of one head, without inrush. */
    public Load(
            String name,
            double ratedCurrentA,
            double ratedVoltageV,
            double voltageExponent,
            double standbyCurrentA,
            DropOut dropOut,
            LoadPattern pattern,
            Set<String> stages) {
        this(
                name,
                ratedCurrentA,
                ratedVoltageV,
                voltageExponent,
                standbyCurrentA,
                dropOut,
                pattern,
                stages,
                Inrush.none(),
                1);
    }

    /** The same load with another pattern. */
    public Load withPattern(LoadPattern other) {
        return new Load(
                name,
                ratedCurrentA,
                ratedVoltageV,
                voltageExponent,
                standbyCurrentA,
                dropOut,
                other,
                stages,
                inrush,
                heads);
    }

    /**
     * Some of its heads as a load of their own.
     *
     * @param partName name of the part
     * @param partHeads how many, 1 … {@link #heads}
     */
    public Load part(String partName, int partHeads) {
        Require.inside("partHeads", partHeads, 1, heads, "");
        Load part = drawing((double) partHeads / heads);
        return new Load(
                partName,
                part.ratedCurrentA,
                ratedVoltageV,
                voltageExponent,
                part.standbyCurrentA,
                dropOut,
                part.pattern,
                stages,
                inrush,
                partHeads);
    }

    /** Current while on and past its inrush, at a voltage of its own terminals (A). */
    public double currentA(double voltageV) {
        return ratedCurrentA * Math.pow(voltageV / ratedVoltageV, voltageExponent);
    }

    /** Largest current, at a voltage of its own terminals (A): that of its inrush, if it has one. */
    public double largestCurrentA(double voltageV) {
        return inrush.atFactor(0) * currentA(voltageV);
    }

    /** Current averaged over the pattern, inrush included, while the stage is on, at a steady voltage (A). */
    public double meanCurrentA(double voltageV) {
        double on = pattern.onFraction();
        double surge = inrush.meanFactor(on, pattern.onsetsPerS());
        return on * surge * currentA(voltageV) + (1 - on) * betweenCurrentA();
    }

    /** Current between the on-intervals of the pattern while the stage is on (A). */
    public double betweenCurrentA() {
        return Math.max(patternBetweenA(), standbyCurrentA);
    }

    private double patternBetweenA() {
        if (pattern instanceof LoadPattern.Duty duty) {
            return duty.betweenCurrentA();
        }
        return pattern instanceof LoadPattern.RandomDuty random ? random.betweenCurrentA() : 0;
    }

    /** Whether a phase with these stages on switches this load on. */
    public boolean isOnIn(Set<String> stagesOn) {
        return stages.isEmpty() || stages.stream().anyMatch(stagesOn::contains);
    }

    /** The same load drawing so many times as much: rated, standby and between its on-times. */
    public Load drawing(double factor) {
        return new Load(
                name,
                factor * ratedCurrentA,
                ratedVoltageV,
                voltageExponent,
                factor * standbyCurrentA,
                dropOut,
                pattern.drawing(factor),
                stages,
                inrush,
                heads);
    }
}
