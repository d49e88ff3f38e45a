package curbwatt.engine.simulation.device;

import curbwatt.engine.simulation.network.SenseTap;
import curbwatt.engine.simulation.part.LinkState;
import curbwatt.engine.simulation.part.LoadBank;
import curbwatt.engine.simulation.part.LoadState;
import java.util.List;
import java.util.Optional;

/** The levels that unfiltered voltages are compared with, and where each voltage is taken. */
public final class ComparedLevels {

    private final LoadBank bank;
    private final Actions actions;
    private final Optional<LinkState> link;
    private final SenseTap[] taps;
    private final double[] levelsV;
    private int number;

    public ComparedLevels(LoadBank bank, Actions actions, Optional<LinkState> link) {
        this.bank = bank;
        this.actions = actions;
        this.link = link;
        int loads =
                bank.circuits.stream().mapToInt(circuit -> circuit.loads.size()).sum();
        taps = new SenseTap[1 + 2 * actions.cutoffs().size() + loads];
        levelsV = new double[taps.length];
    }

    /** Looks up those of the present; their number. */
    public int lookUp() {
        number = 0;
        link.filter(LinkState::switches).ifPresent(state -> add(SenseTap.starterNode(), state.levelV()));
        List<CutoffState> cutoffs = actions.cutoffs();
        for (int i = 0; i < cutoffs.size(); i++) {
            CutoffState cutoff = cutoffs.get(i);
            if (!cutoff.isFiltered()) {
                add(actions.tap(i), cutoff.switchLevelV() - cutoff.settings.sensorErrorV());
                add(actions.tap(i), cutoff.warningLevelV() - cutoff.settings.sensorErrorV());
            }
        }
        for (int c = 0; c < bank.circuits.size(); c++) {
            for (LoadState load : bank.circuits.get(c).loads) {
                if (load.droppedOut) {
                    add(SenseTap.feedEnd(c), load.returnTimer().levelV());
                }
            }
        }
        return number;
    }

    private void add(SenseTap tap, double levelV) {
        taps[number] = tap;
        levelsV[number] = levelV;
        number++;
    }

    /** Where the voltage is taken that is compared with a level looked up. */
    public SenseTap tap(int level) {
        return taps[level];
    }

    /** A level looked up (V). */
    public double levelV(int level) {
        return levelsV[level];
    }
}
