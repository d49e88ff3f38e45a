package curbwatt.engine.simulation;

import curbwatt.engine.result.CrankCheck;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.simulation.book.RunBook;
import curbwatt.engine.simulation.device.RestartWatch;
import curbwatt.engine.simulation.envelope.Envelope;
import curbwatt.engine.simulation.network.CrankProbe;
import curbwatt.engine.simulation.part.Batteries;
import java.util.OptionalDouble;

/** Asks whether the engine would start, from time to time while it is off, and follows the margin through zero. */
final class Restart {

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

    /** Asks at the end of a long step that was found but not taken; if the margin changed sides, in it too. */
    void follow(Envelope envelope, double startS, double lengthS) {
        if (watch.isLost() != crank.marginV(envelope.batteriesAt(1)) < 0) {
            double same = 0;
            double other = 1;
            while ((other - same) * lengthS > RestartWatch.INTERVAL_S) {
                double half = 0.5 * (same + other);
                if (watch.isLost() == crank.marginV(envelope.batteriesAt(half)) < 0) {
                    same = half;
                } else {
                    other = half;
                }
            }
            ask(envelope, startS + same * lengthS, same);
            ask(envelope, startS + other * lengthS, other);
        }
        ask(envelope, startS + lengthS, 1);
    }

    private void ask(Envelope envelope, double timeS, double share) {
        Batteries at = envelope.batteriesAt(share);
        watch.ask(timeS, crank.marginV(at), envelope.nodeV(share), at.starter().stateOfChargeFraction());
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
