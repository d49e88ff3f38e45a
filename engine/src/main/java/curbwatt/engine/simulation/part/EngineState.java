package curbwatt.engine.simulation.part;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.Starter;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.vehicle.Vehicle;
import java.util.Optional;
import java.util.OptionalDouble;

/** Whether the engine turns, how fast, what cranking draws, and what its alternator could deliver. */
public final class EngineState {

    /** A ramp is followed in steps of this share of its length. */
    private static final double RAMP_STEP_FRACTION = 0.05;
    /** Share of its time constant in which air that warms is off a straight line by 0.03 % of its rise. */
    private static final double STRAIGHT_FRACTION = 0.05;
    /** The same in which it is off a parabola by 0.002 %. */
    private static final double BENT_FRACTION = 0.125;
    /** A corner nearer than this is taken as passed: the clock's rounding may hide it for ever (s). */
    private static final double ONE_INSTANT_S = 1e-6;

    private final Optional<Alternator> alternator;
    private final Starter starter;
    private final HoodAir hood;
    private boolean runs;
    private double crankFromS = Double.NEGATIVE_INFINITY;
    private double crankingA;
    private double rampFromS = Double.NEGATIVE_INFINITY;
    private Phase phase;
    private double phaseStartS;
    private double deviceRpm;
    private double leastRpm;

    public EngineState(Vehicle vehicle) {
        alternator = vehicle.alternator();
        starter = vehicle.starting().starter();
        hood = new HoodAir(vehicle.engine().underHood());
    }

    public boolean runs() {
        return runs;
    }

    public Phase phase() {
        return phase;
    }

    /** Whether it runs and stands. */
    public boolean idles() {
        return runs && phase.mode() != EngineMode.DRIVING;
    }

    /** Begins a phase in which the engine is off, or runs on. */
    public void begin(Phase next, double startS, boolean running) {
        phase = next;
        phaseStartS = startS;
        runs = running;
        hood.begin(next, startS, running);
        deviceRpm = 0;
    }

    /** Starts the engine: it cranks, and the alternator's output ramps up once it has. */
    public void start(double timeS, double temperatureC) {
        runs = true;
        hood.engine(timeS, true);
        crankFromS = timeS;
        crankingA = starter.crankingA(temperatureC);
        rampFromS = timeS + starter.durationS();
    }

    /** Runs at a device's speed instead of the phase's (1/min); 0: the phase's again. */
    public void runAt(double rpm) {
        deviceRpm = rpm;
    }

    /** Stops the engine within a phase. */
    public void stop(double timeS) {
        runs = false;
        hood.engine(timeS, false);
        deviceRpm = 0;
    }

    /** Holds an idling engine at no less than a speed (1/min); 0: does not. Says whether that is a change. */
    public boolean holdIdleAt(double rpm) {
        boolean changes = rpm != leastRpm;
        leastRpm = rpm;
        return changes;
    }

    /** Whether a device started it within the phase. */
    public boolean isRunByDevice() {
        return runs && deviceRpm > 0;
    }

    /** Engine speed at a time of this phase (1/min). */
    public double rpm(double timeS) {
        if (!runs) {
            return 0;
        }
        double phaseRpm = deviceRpm > 0 ? deviceRpm : phase.speed().atRpm(timeS - phaseStartS);
        return idles() ? Math.max(phaseRpm, leastRpm) : phaseRpm;
    }

    /** Ends a start that the node cannot carry; false: there is none. */
    public boolean letGoOfStarter(double timeS) {
        boolean cranks = crankFromS > Double.NEGATIVE_INFINITY;
        if (cranks) {
            crankFromS = Double.NEGATIVE_INFINITY;
            stop(timeS);
        }
        return cranks;
    }

    /** Current of the starter at a time (A). */
    public double starterA(double timeS) {
        double sinceS = timeS - crankFromS;
        if (sinceS >= starter.durationS() - ONE_INSTANT_S) {
            return 0;
        }
        return sinceS < starter.inrushS() - ONE_INSTANT_S ? starter.inrushA() : crankingA;
    }

    /** Largest alternator current at a time of this phase (A). */
    public double alternatorMaxA(double timeS) {
        if (!runs || alternator.isEmpty() || timeS < rampFromS) {
            return 0;
        }
        Alternator machine = alternator.get().under(hood.atC(timeS));
        double fullA = machine.maximumA(rpm(timeS));
        double sinceS = timeS - rampFromS;
        return sinceS < machine.rampS() ? fullA * sinceS / machine.rampS() : fullA;
    }

    /** Largest alternator current at this phase's lowest speed and hottest air under the hood (A); empty: none. */
    public OptionalDouble capacityA() {
        return runs && alternator.isPresent()
                ? OptionalDouble.of(alternator
                        .get()
                        .under(phase.hottestUnderHoodC(hood.warming()))
                        .maximumA(phase.speed().lowestRpm()))
                : OptionalDouble.empty();
    }

    /** Voltage that the regulator holds at a time of this phase (V). */
    public double setPointV(double timeS) {
        return alternator.isPresent() ? alternator.get().regulator().setPointV(airC(timeS)) : 0;
    }

    /** Temperature of the air round battery and regulator at a time of this phase (°C). */
    public double airC(double timeS) {
        return phase.air().atC(timeS - phaseStartS);
    }

    /** Temperature of the air under the hood at a time of this phase (°C); that outside where nobody says. */
    public double underHoodC(double timeS) {
        return hood.atC(timeS).orElse(airC(timeS));
    }

    /** Longest step from a time over which starter, alternator and air run nearly straight (s). */
    public double straightForS(double timeS) {
        return plainForS(timeS, STRAIGHT_FRACTION);
    }

    /** The same over which they nearly run on a parabola (s). */
    public double bentForS(double timeS) {
        return plainForS(timeS, BENT_FRACTION);
    }

    private double plainForS(double timeS, double ofTimeConstant) {
        double inPhaseS = timeS - phaseStartS + ONE_INSTANT_S;
        double straightS = phaseStartS + phase.air().nextPointS(inPhaseS) - timeS;
        straightS = Math.min(straightS, hood.plainForS(timeS, inPhaseS, ofTimeConstant));
        straightS = Math.min(straightS, until(crankFromS + starter.inrushS(), timeS));
        straightS = Math.min(straightS, until(rampFromS, timeS));
        if (!runs || alternator.isEmpty()) {
            return straightS;
        }
        double rampS = alternator.get().rampS();
        double sinceS = timeS - rampFromS;
        if (sinceS >= 0 && sinceS < rampS - ONE_INSTANT_S) {
            straightS = Math.min(straightS, Math.min(rampS * RAMP_STEP_FRACTION, rampFromS + rampS - timeS));
        }
        return Math.min(straightS, phaseStartS + phase.speed().nextPointS(inPhaseS) - timeS);
    }

    private static double until(double cornerS, double timeS) {
        return cornerS - timeS > ONE_INSTANT_S ? cornerS - timeS : Double.POSITIVE_INFINITY;
    }
}
