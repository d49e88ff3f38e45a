package curbwatt.charts.wording;

import curbwatt.engine.study.odds.Chance;
import curbwatt.engine.study.odds.Input;
import curbwatt.engine.study.odds.OddsResult;
import curbwatt.engine.study.odds.Sampling;
import java.util.ArrayList;
import java.util.List;

/**
 * What chances take for granted, and what not to trust in them.
 *
 * @param result the draws
 */
public record OddsLimits(OddsResult result) {

    /** What the draws rest on, in sentences. */
    public List<String> assumptions() {
        List<String> sentences = new ArrayList<>();
        for (Input input : result.inputs()) {
            OddsInputText text = new OddsInputText(input);
            sentences.add(text.name() + " (" + text.meaning() + "): "
                    + text.spread(result.plan().spread(input)) + ".");
        }
        sentences.add("The inputs are drawn independently of each other.");
        sentences.add("The instant until which circuits are to be held moves with the length of the scene.");
        sentences.add(
                "A trip is a nuisance if the same draw, with no cutoff acting, would have started at every moment, with the margin"
                        + " asked and kept the charge asked.");
        sentences.add(
                result.plan().sampling() == Sampling.SOBOL
                        ? "Draws: " + result.draws().size() + " of a Sobol sequence in 16 shifted replicates, seed "
                                + result.plan().seed() + "."
                        : "Draws: " + result.draws().size() + " at random, seed "
                                + result.plan().seed() + ".");
        return sentences;
    }

    /** What not to trust, in sentences. */
    public List<String> doubts() {
        List<String> sentences = new ArrayList<>();
        sentences.add(
                "The bounds speak of the number of draws alone. If a spread is wrong the chance is wrong, however many"
                        + " draws there are.");
        Chance starts = result.starts();
        if (starts.hits() == starts.draws()) {
            sentences.add(
                    "That it starts in every draw does not say it always will: the draws can't see a chance of failure"
                            + " below " + ChanceText.share(1 - starts.lowFraction()) + ".");
        }
        return sentences;
    }
}
