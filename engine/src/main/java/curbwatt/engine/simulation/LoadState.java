package curbwatt.engine.simulation;

import curbwatt.engine.load.Load;

/** One load between steps: wanted by its stage, lit by its pattern, silent because its voltage fell too low. */
final class LoadState {

    final Load load;
    final FlashCycle cycle;
    private final LevelTimer dropTimer;
    private final LevelTimer returnTimer;
    boolean wanted;
    boolean droppedOut;
    double firstDropOutS = Double.NaN;
    int dropOuts;
    double droppedOutS;

    LoadState(Load load) {
        this.load = load;
        this.cycle = FlashCycle.of(load.pattern());
        this.dropTimer = LevelTimer.below(load.dropOut().levelV(), 0);
        this.returnTimer =
                LevelTimer.returning(load.dropOut().returnV(), load.dropOut().returnDelayS());
    }

    /** Whether it draws its rated current. */
    boolean isLit() {
        return wanted && cycle.isLit() && !droppedOut;
    }

    /** Current that it draws when not lit but fed (A). */
    double restingA() {
        if (droppedOut) {
            return 0;
        }
        return wanted ? load.betweenCurrentA() : load.standbyCurrentA();
    }

    boolean mayDropOut() {
        return load.dropOut().isPossible() && isLit();
    }

    void dropOut(double timeS) {
        droppedOut = true;
        dropOuts++;
        if (Double.isNaN(firstDropOutS)) {
            firstDropOutS = timeS;
        }
        returnTimer.reset();
    }

    /** Says at once when the voltage falls below the drop-out level. */
    LevelTimer dropTimer() {
        return dropTimer;
    }

    LevelTimer returnTimer() {
        return returnTimer;
    }
}
