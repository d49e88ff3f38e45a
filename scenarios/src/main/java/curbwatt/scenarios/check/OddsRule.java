package curbwatt.scenarios.check;

import curbwatt.engine.study.odds.Input;
import curbwatt.engine.study.odds.Spread.Shape;
import curbwatt.scenarios.file.OddsEntry;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.SamplingWord;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.file.SpreadEntry;
import java.util.Optional;

/** Draws that a Sobol sequence can make, and spreads whose figures go together. */
final class OddsRule implements Rule {

    @Override
    public void look(ScenarioFile file, Findings findings) {
        file.studies().flatMap(studies -> studies.odds()).ifPresent(odds -> {
            runs(odds, findings);
            for (Input input : Input.values()) {
                SpreadFigures.of(odds, input).ifPresent(figures -> spread(figures, findings));
            }
        });
    }

    private static void runs(OddsEntry odds, Findings findings) {
        boolean even = odds.sampling().orElse(SamplingWord.SOBOL) == SamplingWord.SOBOL;
        odds.runs().filter(runs -> even && Integer.bitCount(runs) != 1).ifPresent(runs -> {
            int below = Integer.highestOneBit(runs);
            findings.error(
                    odds.place().key("runs"),
                    "runs is " + runs + ", but a Sobol sequence is even only over a power of two.",
                    "Write " + below + " or " + 2 * below + ", or \"sampling\": \"seeded\".");
        });
    }

    private static void spread(SpreadFigures figures, Findings findings) {
        SpreadEntry entry = figures.entry();
        Shape shape = figures.shape();
        boolean alone = only(entry.sd(), entry, "sd", shape == Shape.NORMAL, "normal", findings)
                && only(entry.likeliest(), entry, "likeliest", shape != Shape.UNIFORM, "triangular", findings)
                && only(entry.from(), entry, "from", shape != Shape.FIXED, "normal", findings)
                && only(entry.to(), entry, "to", shape != Shape.FIXED, "normal", findings);
        if (!alone) {
            return;
        }
        if (shape != Shape.FIXED && figures.from() >= figures.to()) {
            findings.error(
                    written(entry, "from", entry.from()),
                    "It spreads from " + shown(figures.from(), entry) + " to " + shown(figures.to(), entry)
                            + ": nothing lies between.",
                    "from" + entry.ending() + " lies below to" + entry.ending() + ".");
        } else if (shape != Shape.UNIFORM
                && (figures.likeliest() < figures.from() || figures.likeliest() > figures.to())) {
            findings.error(
                    written(entry, "likeliest", entry.likeliest()),
                    "The likeliest value, " + shown(figures.likeliest(), entry) + ", does not lie between "
                            + shown(figures.from(), entry) + " and " + shown(figures.to(), entry) + ".",
                    "Move it, or from" + entry.ending() + " or to" + entry.ending() + ".");
        }
    }

    /** Whether a key goes with the shape; notes it if not. */
    private static boolean only(
            Optional<Double> value, SpreadEntry entry, String key, boolean goes, String with, Findings findings) {
        if (value.isPresent() && !goes) {
            findings.error(
                    entry.place().key(key + entry.ending()),
                    key + entry.ending() + " does not go with the distribution, "
                            + entry.distribution().map(word -> "'" + word + "'").orElse("which is the usual one")
                            + ".",
                    "Remove it, or write \"distribution\": \"" + with + "\".");
            return false;
        }
        return true;
    }

    private static Place written(SpreadEntry entry, String key, Optional<Double> value) {
        return value.isPresent() ? entry.place().key(key + entry.ending()) : entry.place();
    }

    private static String shown(double value, SpreadEntry entry) {
        String unit = entry.ending().equals("Percent") ? "%" : entry.ending();
        return Shown.number(value / entry.scale()) + " " + unit;
    }
}
