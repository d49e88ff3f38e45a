package curbwatt.engine.simulation;

import curbwatt.engine.result.CrankCheck;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.simulation.book.RunBook;
import curbwatt.engine.simulation.device.RestartWatch;
import curbwatt.engine.simulation.network.CrankProbe;
import curbwatt.engine.simulation.part.Batteries;
import java.util.OptionalDouble;

/** Asks whether the engine would start, from time to time while it is off, and follows the margin through zero. */
final class Restart {

    /** Nearer to zero than this, the margin's sign depends on what flashes do to the battery within a cycle (V). */
    private static final double PLAINLY_V = 5e-4;

    private final CrankProbe crank;
    private final Stepping stepping;
    private final RunBook book;
    private final RestartWatch watch;

    Restart(CrankProbe crank, Stepping stepping, RunBook book, String battery) {
        this.crank = crank;
        this.stepping = stepping;
        this.book = book;
        watch = new RestartWatch(book, battery);
    }

    /** Lowest voltage of a start now (V). */
    double lowestV() {
        return crank.lowestV(stepping.batteries);
    }

    /** Whether it would be enough. */
    boolean starts() {
        return lowestV() >= crank.minimumV(stepping.batteries);
    }

    /** The engine has just stopped or something has switched: the margin may have jumped. */
    void begin(double timeS) {
        watch.begin(timeS, crank.marginV(stepping.batteries), stepping.endV(), stepping.starterCharge());
    }

    /** The engine runs: nothing to follow. */
    void rest() {
        watch.rest();
    }

    boolean isDue(double timeS) {
        return watch.isDue(timeS);
    }

    void follow(double timeS) {
        watch.ask(timeS, crank.marginV(stepping.batteries), stepping.endV(), stepping.starterCharge());
        book.noteCold();
    }

    /** Whether, with the batteries so, the margin lies plainly on the side on which it was when last asked for. */
    boolean isPlain(Batteries batteries) {
        double marginV = crank.marginV(batteries);
        return Math.abs(marginV) > PLAINLY_V && marginV < 0 == watch.isLost();
    }

    OptionalDouble firstLostS() {
        return watch.firstLostS();
    }

    CrankCheck check(double timeS, Phase phase) {
        Batteries batteries = stepping.batteries;
        return new CrankCheck(
                timeS,
                phase.name(),
                batteries.starter().temperatureC(),
                crank.lowestV(batteries),
                crank.lowestV(batteries, false),
                crank.minimumV(batteries));
    }
}
