package curbwatt.engine.simulation.device;

import curbwatt.engine.control.AutomaticStart;
import curbwatt.engine.control.HeldCondition;
import curbwatt.engine.control.HighIdleControl;
import curbwatt.engine.control.IdleTrigger;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.simulation.clock.LevelCount;
import curbwatt.engine.simulation.network.SenseTap;
import curbwatt.engine.simulation.part.EngineState;
import curbwatt.engine.simulation.part.OperatingPoint;
import curbwatt.engine.vehicle.EngineEquipment;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.function.Function;

/**
 * The devices that act on the engine, between steps: their settings decide, this class remembers and finds the times.
 *
 * <p>A device waits for its wish to hold for a delay. Within a step voltage and current run straight, so the moment at
 * which
 * a wish begins or ends is found on that line, and the step is cut there.
 */
public final class EngineWatch {

    private static final int HALVINGS = 50;
    /** Past a crossing by this, so that the wish is plainly changed there (s). */
    private static final double PLAINLY_S = 1e-7;
    /** More than a clock's rounding, and than what the settings' own rules take as one instant (s). */
    private static final double ONE_INSTANT_S = 2e-6;

    private final Optional<HighIdleControl> highIdle;
    private final Optional<AutomaticStart> automatic;
    private final SenseTap idleTap;
    private final SenseTap startTap;
    private HighIdleControl.State idleState;
    private AutomaticStart.State startState;

    public EngineWatch(EngineEquipment equipment, Function<SensePoint, SenseTap> taps) {
        highIdle = equipment.highIdle();
        automatic = equipment.automaticStart();
        idleTap = highIdle.map(HighIdleControl::trigger)
                .filter(IdleTrigger.BelowVoltage.class::isInstance)
                .map(trigger -> taps.apply(((IdleTrigger.BelowVoltage) trigger).sense()))
                .orElse(SenseTap.starterNode());
        startTap = automatic.map(device -> taps.apply(device.sense())).orElse(SenseTap.starterNode());
        idleState = highIdle.map(HighIdleControl::start).orElse(null);
        startState = automatic.map(AutomaticStart::start).orElse(null);
    }

    public boolean isRaised() {
        return idleState != null && idleState.raised();
    }

    /** Whether the automatic start has, or wants, the engine running. */
    public boolean wantsRunning() {
        return startState != null && startState.running();
    }

    /** The start that it asked for did not succeed. */
    public void startFailed(double timeS) {
        startState = automatic.orElseThrow().failed(startState, timeS);
    }

    public void phaseBegan() {
        automatic.ifPresent(device -> startState = device.phaseBegan(startState));
    }

    public int raises() {
        return idleState == null ? 0 : idleState.raises();
    }

    public double raisedS(double timeS) {
        return idleState == null ? 0 : idleState.raisedS(timeS);
    }

    /**
     * Time in a step at which a wish changes or a device acts; positive infinity: nothing happens (s).
     *
     * <p>Delays are often whole numbers of seconds, and end where a flash edge ends a step: a rounding must not let them end
     * unseen between two steps.
     */
    public double firstS(double timeS, double lengthS, OperatingPoint start, OperatingPoint end, EngineState engine) {
        double firstS = Double.POSITIVE_INFINITY;
        if (highIdle.isPresent() && engine.idles()) {
            HighIdleControl control = highIdle.get();
            HighIdleControl.State now = idle(control, idleState, timeS, start, engine);
            if (now.raised() != idleState.raised()) {
                return 0;
            }
            firstS = Math.min(
                    changeS(
                            lengthS,
                            share -> control.wishes(
                                    now, between(idleTap, start, end, share), batteryA(start, end, share))),
                    dueInS(control.actsAtS(now), timeS, lengthS));
        }
        if (automatic.isPresent() && engine.phase().mode() == EngineMode.OFF) {
            AutomaticStart device = automatic.get();
            AutomaticStart.State now = automatic(device, startState, timeS, start, engine);
            if (now.running() != startState.running()) {
                return 0;
            }
            firstS = Math.min(
                    firstS,
                    Math.min(
                            changeS(
                                    lengthS,
                                    share -> device.wishes(
                                            now, between(startTap, start, end, share), batteryA(start, end, share))),
                            dueInS(device.actsAtS(now), timeS, lengthS)));
        }
        return firstS;
    }

    /** As {@link #dueS}; what is due within an instant after the step's end is due at its end. */
    private static double dueInS(double atS, double timeS, double lengthS) {
        double dueS = dueS(atS, timeS);
        return dueS > lengthS && dueS < lengthS + ONE_INSTANT_S ? lengthS : dueS;
    }

    private static double dueS(double atS, double timeS) {
        return Math.max(0, atS - timeS);
    }

    private static double changeS(double lengthS, DoublePredicate wishesAtShare) {
        boolean before = wishesAtShare.test(0);
        if (lengthS == 0 || wishesAtShare.test(1) == before) {
            return Double.POSITIVE_INFINITY;
        }
        double same = 0;
        double other = 1;
        for (int i = 0; i < HALVINGS && (other - same) * lengthS > 1e-9; i++) {
            double middle = 0.5 * (same + other);
            if (wishesAtShare.test(middle) == before) {
                same = middle;
            } else {
                other = middle;
            }
        }
        return Math.min(lengthS, other * lengthS + PLAINLY_S);
    }

    private static double between(SenseTap tap, OperatingPoint start, OperatingPoint end, double share) {
        return tap.voltageV(start) + share * (tap.voltageV(end) - tap.voltageV(start));
    }

    private static double batteryA(OperatingPoint start, OperatingPoint end, double share) {
        return start.starter.batteryA() + share * (end.starter.batteryA() - start.starter.batteryA());
    }

    /** Takes note of a step. */
    public void advance(double timeS, double endS, OperatingPoint start, OperatingPoint end, EngineState engine) {
        if (highIdle.isPresent()) {
            HighIdleControl control = highIdle.get();
            idleState = idle(control, idle(control, idleState, timeS, start, engine), endS, end, engine);
        }
        if (automatic.isPresent()) {
            AutomaticStart device = automatic.get();
            startState = automatic(device, automatic(device, startState, timeS, start, engine), endS, end, engine);
        }
    }

    /** Takes note of a time in which some wishes came to nothing, whatever the figures at its ends say. */
    void advanceInterrupted(
            double timeS,
            double endS,
            OperatingPoint start,
            OperatingPoint end,
            EngineState engine,
            List<LevelCount> interrupted) {
        HighIdleControl.State idleBefore = idleState;
        AutomaticStart.State startBefore = startState;
        advance(timeS, endS, start, end, engine);
        for (LevelCount count : interrupted) {
            if (count instanceof VoltageWish wish
                    && highIdle.filter(wish.device()::equals).isPresent()) {
                idleState = idleBefore.forgetting();
            } else if (count instanceof VoltageWish wish
                    && automatic.filter(wish.device()::equals).isPresent()) {
                startState = startBefore.forgetting();
            }
        }
    }

    private HighIdleControl.State idle(
            HighIdleControl control, HighIdleControl.State state, double timeS, OperatingPoint at, EngineState engine) {
        return control.next(state, timeS, engine.idles(), idleTap.voltageV(at), at.starter.batteryA());
    }

    private AutomaticStart.State automatic(
            AutomaticStart device, AutomaticStart.State state, double timeS, OperatingPoint at, EngineState engine) {
        return device.next(state, timeS, engine.phase().mode(), startTap.voltageV(at), at.starter.batteryA());
    }

    /** Time for which figures between two bounds leave the devices at what they do or wait for (s); 0: they might not. */
    double calmForS(double timeS, OperatingPoint lowest, OperatingPoint highest, EngineState engine) {
        return Math.min(idleCalmForS(timeS, lowest, highest, engine), startCalmForS(timeS, lowest, highest, engine));
    }

    private double idleCalmForS(double timeS, OperatingPoint lowest, OperatingPoint highest, EngineState engine) {
        if (highIdle.isEmpty() || !engine.idles()) {
            return Double.POSITIVE_INFINITY;
        }
        HighIdleControl control = highIdle.get();
        HighIdleControl.State now = idle(control, idleState, timeS, lowest, engine);
        return now.raised() != idleState.raised() || changes(idleTap, lowest, highest, control::wishes, now)
                ? 0
                : dueS(control.actsAtS(now), timeS);
    }

    private double startCalmForS(double timeS, OperatingPoint lowest, OperatingPoint highest, EngineState engine) {
        if (automatic.isEmpty() || engine.phase().mode() != EngineMode.OFF) {
            return Double.POSITIVE_INFINITY;
        }
        AutomaticStart device = automatic.get();
        AutomaticStart.State now = automatic(device, startState, timeS, lowest, engine);
        return now.running() != startState.running() || changes(startTap, lowest, highest, device::wishes, now)
                ? 0
                : dueS(device.actsAtS(now), timeS);
    }

    /** As {@link #calmForS}, as if wishes for a voltage that lies within the bounds came to nothing. */
    double calmIfInterruptedForS(double timeS, OperatingPoint lowest, OperatingPoint highest, EngineState engine) {
        double calmS = Double.POSITIVE_INFINITY;
        boolean idleWaits = idleWish(timeS, engine)
                .filter(wish -> wish.isWithin(idleTap.voltageV(lowest), idleTap.voltageV(highest)))
                .isPresent();
        boolean startWaits = startWish(timeS, engine)
                .filter(wish -> wish.isWithin(startTap.voltageV(lowest), startTap.voltageV(highest)))
                .isPresent();
        if (!idleWaits) {
            calmS = idleCalmForS(timeS, lowest, highest, engine);
        }
        return startWaits ? calmS : Math.min(calmS, startCalmForS(timeS, lowest, highest, engine));
    }

    /** What the idle control waits for at present, if that is a voltage. */
    public Optional<VoltageWish> idleWish(double timeS, EngineState engine) {
        return highIdle.filter(control -> engine.idles() && control.trigger() instanceof IdleTrigger.BelowVoltage)
                .map(control -> {
                    IdleTrigger.BelowVoltage trigger = (IdleTrigger.BelowVoltage) control.trigger();
                    double countedS = countedS(idleState.wish(), timeS);
                    return idleState.raised()
                            ? new VoltageWish(
                                    control, idleTap, false, trigger.recoveredV(), countedS, control.releaseDelayS())
                            : new VoltageWish(control, idleTap, true, trigger.levelV(), countedS, control.delayS());
                });
    }

    /** What the automatic start waits for at present, if that is a voltage. */
    public Optional<VoltageWish> startWish(double timeS, EngineState engine) {
        return automatic
                .filter(device ->
                        engine.phase().mode() == EngineMode.OFF && !startState.running() && !startState.locked())
                .map(device -> new VoltageWish(
                        device, startTap, true, device.levelV(), countedS(startState.wish(), timeS), device.delayS()));
    }

    private static double countedS(HeldCondition wish, double timeS) {
        return Math.max(0, timeS - wish.fromS());
    }

    /** What a device wishes in a state, with a sensed voltage and a battery current. */
    private interface Wishes<S> {
        boolean at(S state, double sensedV, double batteryA);
    }

    private static <S> boolean changes(
            SenseTap tap, OperatingPoint lowest, OperatingPoint highest, Wishes<S> wishes, S state) {
        double lowV = tap.voltageV(lowest);
        double highV = tap.voltageV(highest);
        double lowA = lowest.starter.batteryA();
        double highA = highest.starter.batteryA();
        boolean first = wishes.at(state, lowV, lowA);
        // a wish may end where a charge does
        double betweenA = lowA < 0 && highA > 0 ? 0 : lowA;
        return first != wishes.at(state, highV, lowA)
                || first != wishes.at(state, lowV, highA)
                || first != wishes.at(state, highV, highA)
                || first != wishes.at(state, lowV, betweenA);
    }
}
