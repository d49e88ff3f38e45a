package curbwatt.engine.simulation.device;

import curbwatt.engine.simulation.clock.LevelCount;
import curbwatt.engine.simulation.clock.LevelTimer;
import curbwatt.engine.simulation.part.Batteries;
import curbwatt.engine.simulation.part.CircuitState;
import curbwatt.engine.simulation.part.EngineState;
import curbwatt.engine.simulation.part.LinkState;
import curbwatt.engine.simulation.part.LoadBank;
import curbwatt.engine.simulation.part.LoadState;
import curbwatt.engine.simulation.part.OperatingPoint;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Asks all devices at once whether a long time may pass over them.
 *
 * <p>It is calm where everything that they see stays on one side of all their levels, or where what they count is not
 * over yet. What they may see is given as bounds.
 */
public final class CalmWatch {

    private final LoadBank bank;
    private final Actions actions;
    private final List<CutoffState> cutoffs;
    private final Optional<LinkState> link;
    private final EngineWatch watch;
    private final Optional<PackState> pack;
    private final EngineState engine;
    private final Predicate<Batteries> restartIsPlain;
    /** Lower and upper bounds of voltages, circuits' currents and batteries' currents. */
    public final OperatingPoint lowest;

    public final OperatingPoint highest;
    /** Bounds of each cutoff's reading (V). */
    public final double[] lowestReadingV;

    public final double[] highestReadingV;
    /** Each cutoff's reading at the end (V). */
    public final double[] endReadingV;

    /** How fuses warm. */
    public final FuseWarming fuses;

    private final ComparedLevels levels;

    /**
     * Makes a watch.
     *
     * @param restartIsPlain whether, with the batteries so, the engine would plainly start, or plainly not, as before
     */
    public CalmWatch(
            LoadBank bank,
            Actions actions,
            Optional<LinkState> link,
            EngineWatch watch,
            Optional<PackState> pack,
            EngineState engine,
            Predicate<Batteries> restartIsPlain) {
        this.bank = bank;
        this.actions = actions;
        this.link = link;
        this.watch = watch;
        this.pack = pack;
        this.engine = engine;
        this.restartIsPlain = restartIsPlain;
        cutoffs = actions.cutoffs();
        lowest = new OperatingPoint(bank.circuits.size());
        highest = new OperatingPoint(bank.circuits.size());
        lowestReadingV = new double[cutoffs.size()];
        highestReadingV = new double[cutoffs.size()];
        endReadingV = new double[cutoffs.size()];
        fuses = new FuseWarming(bank.circuits);
        levels = new ComparedLevels(bank, actions, link);
    }

    /** Whether, with the batteries so, the engine runs, or would plainly start, or plainly not, as before. */
    public boolean isRestartPlain(Batteries batteries) {
        return engine.runs() || restartIsPlain.test(batteries);
    }

    /** Time for which the bounds let nothing happen (s); 0: something might, or might begin to count. */
    public double calmForS(double timeS) {
        double calmS = Math.min(watch.calmForS(timeS, lowest, highest, engine), besideCutoffsAndEngineForS());
        for (int i = 0; i < cutoffs.size() && calmS > 0; i++) {
            calmS = Math.min(calmS, cutoffs.get(i).calmForS(lowestReadingV[i], highestReadingV[i], engine.runs()));
        }
        return calmS;
    }

    /** As {@link #calmForS}, but for cutoffs that filter: they are followed. A fuse that warms must be shown each segment. */
    public double calmBesideFiltersForS(double timeS) {
        if (fuses.isPossible(highest)) {
            return 0;
        }
        double calmS = Math.min(watch.calmForS(timeS, lowest, highest, engine), besideCutoffsAndEngineForS());
        for (int i = 0; i < cutoffs.size() && calmS > 0; i++) {
            CutoffState cutoff = cutoffs.get(i);
            if (!cutoff.isFiltered()) {
                calmS = Math.min(calmS, cutoff.calmForS(lowestReadingV[i], highestReadingV[i], engine.runs()));
            }
        }
        return calmS;
    }

    /** As {@link #calmForS}, as if what {@link #countsWithin} tells came to nothing. */
    public double calmIfInterruptedForS(double timeS) {
        double calmS =
                Math.min(watch.calmIfInterruptedForS(timeS, lowest, highest, engine), besideCutoffsAndEngineForS());
        for (int i = 0; i < cutoffs.size() && calmS > 0; i++) {
            CutoffState cutoff = cutoffs.get(i);
            calmS = Math.min(
                    calmS,
                    cutoff.isFiltered()
                            ? cutoff.calmForS(lowestReadingV[i], highestReadingV[i], engine.runs())
                            : cutoff.calmElsewhereForS(lowestReadingV[i], highestReadingV[i], engine.runs()));
        }
        return calmS;
    }

    /** Tells the counts of unfiltered voltages whose level lies within the bounds. */
    public void countsWithin(double timeS, LevelCountTaker taker) {
        for (int i = 0; i < cutoffs.size(); i++) {
            CutoffState cutoff = cutoffs.get(i);
            for (int t = 0; t < cutoff.pendingTimers() && !cutoff.isFiltered(); t++) {
                LevelTimer timer = cutoff.pendingTimer(t);
                if (timer.isWithin(lowestReadingV[i], highestReadingV[i])) {
                    taker.take(timer, actions.tap(i), cutoff.settings.sensorErrorV());
                }
            }
        }
        watch.idleWish(timeS, engine).ifPresent(wish -> tell(wish, taker));
        watch.startWish(timeS, engine).ifPresent(wish -> tell(wish, taker));
    }

    private void tell(VoltageWish wish, LevelCountTaker taker) {
        if (wish.isWithin(wish.tap().voltageV(lowest), wish.tap().voltageV(highest))) {
            taker.take(wish, wish.tap(), 0);
        }
    }

    private double besideCutoffsAndEngineForS() {
        double calmS = Double.POSITIVE_INFINITY;
        if (link.isPresent()) {
            calmS = Math.min(calmS, link.get().calmForS(lowest.starter.nodeV, highest.starter.nodeV));
        }
        for (int c = 0; c < bank.circuits.size() && calmS > 0; c++) {
            CircuitState circuit = bank.circuits.get(c);
            calmS = Math.min(calmS, fuses.calmForS(c, highest));
            for (int i = 0; circuit.hasDropOuts && circuit.isFed() && i < circuit.loads.size(); i++) {
                LoadState load = circuit.loads.get(i);
                if (load.droppedOut) {
                    calmS = Math.min(calmS, load.returnTimer().calmForS(lowest.farV[c], highest.farV[c]));
                }
            }
        }
        return calmS;
    }

    /** Whether nothing can happen but what the waveform decides that {@link Actions} is shown: no pack, no drop-out. */
    public boolean mayWalk() {
        for (int c = 0; c < bank.circuits.size(); c++) {
            CircuitState circuit = bank.circuits.get(c);
            if (circuit.hasDropOuts && circuit.isFed() && !circuit.keepsLoads(lowest.farV[c])) {
                return false;
            }
        }
        return pack.isEmpty() || pack.get().isCalm(lowest.equipment, highest.equipment);
    }

    /** Whether cycles may be repeated: nothing but levels of voltage is waited for. */
    public boolean mayRepeat(double timeS) {
        if (fuses.isPossible(highest)) {
            return false;
        }
        for (int i = 0; i < cutoffs.size(); i++) {
            if (cutoffs.get(i).isFiltered()
                    && cutoffs.get(i).calmForS(lowestReadingV[i], highestReadingV[i], engine.runs()) == 0) {
                return false;
            }
        }
        return watch.calmForS(timeS, lowest, highest, engine) > 0;
    }

    /** Takes note of a calm time; fuses that may warm in it are told apart. */
    public void advance(double timeS, double endS, OperatingPoint start, OperatingPoint end) {
        advanceBesideEngine(timeS, endS, cutoff -> true);
        watch.advance(timeS, endS, start, end, engine);
    }

    /** As {@link #advance}, but for cutoffs that filter. */
    public void advanceBesideFilters(double timeS, double endS, OperatingPoint start, OperatingPoint end) {
        advanceBesideEngine(timeS, endS, cutoff -> !cutoff.isFiltered());
        watch.advance(timeS, endS, start, end, engine);
    }

    /** Takes note of a time in which some counts came to nothing: they begin anew. */
    public void advanceInterrupted(
            double timeS, double endS, OperatingPoint start, OperatingPoint end, List<LevelCount> interrupted) {
        advanceBesideEngine(timeS, endS, cutoff -> true);
        watch.advanceInterrupted(timeS, endS, start, end, engine, interrupted);
        for (LevelCount count : interrupted) {
            if (count instanceof LevelTimer timer) {
                timer.reset();
            }
        }
    }

    private void advanceBesideEngine(double timeS, double endS, Predicate<CutoffState> shown) {
        double durationS = endS - timeS;
        if (link.isPresent()) {
            link.get().advanceCalm(lowest.starter.nodeV, durationS);
        }
        for (int i = 0; i < cutoffs.size(); i++) {
            CutoffState cutoff = cutoffs.get(i);
            if (shown.test(cutoff)) {
                cutoff.advanceCalm(durationS, lowestReadingV[i], endReadingV[i], engine.runs());
            }
        }
        for (int c = 0; c < bank.circuits.size(); c++) {
            CircuitState circuit = bank.circuits.get(c);
            if (!fuses.mayWarm(c, highest)) {
                circuit.warmFuse(highest.circuitA[c], durationS);
            }
            for (int i = 0; circuit.hasDropOuts && circuit.isFed() && i < circuit.loads.size(); i++) {
                LoadState load = circuit.loads.get(i);
                if (load.droppedOut) {
                    load.returnTimer().advanceCalm(lowest.farV[c], durationS);
                }
            }
        }
        if (pack.isPresent()) {
            pack.get().advance(endS, durationS, lowest.equipment);
        }
    }

    /** Time from one for which the cycle just passed may be repeated without an act (s). */
    public double repeatsForS(double timeS, double cycleS) {
        double repeatsS = watch.calmForS(timeS, lowest, highest, engine);
        if (link.isPresent()) {
            repeatsS = Math.min(repeatsS, link.get().repeatsForS(cycleS));
        }
        for (int i = 0; i < cutoffs.size(); i++) {
            repeatsS = Math.min(repeatsS, cutoffs.get(i).repeatsForS(cycleS, engine.runs()));
        }
        for (CircuitState circuit : bank.circuits) {
            for (int i = 0; circuit.hasDropOuts && circuit.isFed() && i < circuit.loads.size(); i++) {
                LoadState load = circuit.loads.get(i);
                if (load.droppedOut) {
                    repeatsS = Math.min(repeatsS, load.returnTimer().repeatsForS(cycleS));
                }
            }
        }
        return repeatsS;
    }

    /** Takes note of whole cycles like the one just passed; {@link #endReadingV} holds what the filters read then. */
    public void repeat(double cycleS, double durationS) {
        link.ifPresent(state -> state.repeat(cycleS, durationS));
        for (int i = 0; i < cutoffs.size(); i++) {
            cutoffs.get(i).repeat(cycleS, durationS, endReadingV[i], engine.runs());
        }
        for (int c = 0; c < bank.circuits.size(); c++) {
            CircuitState circuit = bank.circuits.get(c);
            circuit.warmFuse(highest.circuitA[c], durationS);
            for (int i = 0; circuit.hasDropOuts && circuit.isFed() && i < circuit.loads.size(); i++) {
                LoadState load = circuit.loads.get(i);
                if (load.droppedOut) {
                    load.returnTimer().repeat(cycleS, durationS);
                }
            }
        }
    }

    /** The levels that unfiltered voltages are compared with. */
    public ComparedLevels levels() {
        return levels;
    }
}
