package curbwatt.engine.study.odds;

import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.CrankCheck;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.study.Answer;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.Variation;
import curbwatt.engine.verdict.Finding;
import curbwatt.engine.verdict.Requirement;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Runs draws.
 *
 * @param base the vehicle in the scene as the scenario says, and what is asked
 * @param inputs the inputs that vary, in the order of a draw's values
 */
record Trial(Question base, List<Input> inputs) {

    /** A level that no reading comes down to, so that a cutoff set to it never acts (V). */
    private static final double NEVER_V = 6;

    private static final double LONGEST_DELAY_S = 3600;

    Trial {
        inputs = List.copyOf(inputs);
    }

    /** The question with a draw's values in place of the scenario's. */
    Question question(List<Double> values) {
        List<Variation> variations = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            variations.add(inputs.get(i).variation(values.get(i)));
        }
        Simulation drawn = Variation.all(variations).of(base.simulation());
        return new Question(
                drawn,
                base.requirements().stream()
                        .map(requirement -> moved(requirement, drawn.scene()))
                        .toList());
    }

    /** Runs a draw, handing each step to the recorder. */
    Outcome outcome(List<Double> values, Recorder recorder) {
        Question question = question(values);
        Answer answer = question.answer(recorder);
        return outcome(answer, hasTripped(answer) && isSafeWithoutCutoff(question));
    }

    /** Runs a draw, but leaves open whether a trip was a nuisance: half the work. */
    Outcome figures(List<Double> values) {
        return outcome(question(values).answer(), false);
    }

    private static boolean hasTripped(Answer answer) {
        return answer.result().events().stream().anyMatch(event -> event.kind() == EventKind.CUTOFF_TRIPPED);
    }

    private static Outcome outcome(Answer answer, boolean nuisance) {
        return new Outcome(
                answer.isMet(),
                heldFraction(answer),
                marginV(answer.result()),
                enoughMargin(answer),
                answer.firstTripS(),
                hasTripped(answer),
                nuisance);
    }

    /** The instant until which circuits are to be held moves with the phases round it. */
    private Requirement moved(Requirement requirement, Scene drawn) {
        if (!(requirement instanceof Requirement.HoldCircuits hold)) {
            return requirement;
        }
        double leftS = hold.durationS();
        double movedS = 0;
        List<Phase> phases = base.simulation().scene().phases();
        for (int i = 0; i < phases.size(); i++) {
            double partS = Math.min(leftS, phases.get(i).durationS());
            leftS -= partS;
            movedS += partS / phases.get(i).durationS() * drawn.phases().get(i).durationS();
        }
        return new Requirement.HoldCircuits(hold.circuits(), movedS + leftS);
    }

    private static OptionalDouble heldFraction(Answer answer) {
        return answer.findings(Requirement.HoldCircuits.class)
                .mapToDouble(finding -> finding.met() ? 1 : Math.min(1 - 1e-9, finding.figure() / finding.limit()))
                .min();
    }

    private static double marginV(RunResult result) {
        return result.crankChecks().stream()
                .mapToDouble(check -> Math.max(check.marginV(), -check.minimumV()))
                .min()
                .orElseThrow();
    }

    private static boolean enoughMargin(Answer answer) {
        return answer.result().crankChecks().stream()
                        .mapToDouble(CrankCheck::marginV)
                        .allMatch(marginV -> marginV >= 0)
                && answer.findings(Requirement.WillStart.class).allMatch(Finding::met);
    }

    /** Whether, with no cutoff acting, the same draw would have started at every moment and kept its charge as asked. */
    private static boolean isSafeWithoutCutoff(Question question) {
        Simulation simulation = question.simulation();
        Simulation unguarded = simulation.with(simulation
                .vehicle()
                .withCutoffs(simulation.vehicle().cutoffs().stream()
                        .map(cutoff -> cutoff.tripping(NEVER_V, LONGEST_DELAY_S))
                        .toList()));
        return new Question(unguarded, question.requirements(), question.onlooker())
                .answerWhileItStarts()
                .filter(answer -> enoughMargin(answer)
                        && answer.findings(Requirement.KeepCharge.class).allMatch(Finding::met)
                        && answer.findings(Requirement.KeepAuxiliaryCharge.class)
                                .allMatch(Finding::met))
                .isPresent();
    }
}
