package curbwatt.engine.study;

import curbwatt.engine.result.RunResult;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.verdict.Judge;
import curbwatt.engine.verdict.Requirement;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A vehicle in a scene, and what is asked of it.
 *
 * @param simulation the vehicle in the scene
 * @param requirements what is asked, in the order of the findings
 * @param onlooker hears each step of each run that answers; it can't change an answer, but end one by throwing
 */
public record Question(Simulation simulation, List<Requirement> requirements, Recorder onlooker) {

    /** Copies the list. */
    public Question {
        Objects.requireNonNull(simulation, "simulation");
        requirements = List.copyOf(requirements);
        Objects.requireNonNull(onlooker, "onlooker");
    }

    /** A question that nobody looks on while it is answered. */
    public Question(Simulation simulation, List<Requirement> requirements) {
        this(simulation, requirements, Recorder.none());
    }

    /** The same question of another vehicle or scene. */
    public Question of(Variation variation) {
        return new Question(variation.of(simulation), requirements, onlooker);
    }

    /** Runs the scene without keeping a trace, and judges it. */
    public Answer answer() {
        return answer(onlooker);
    }

    /** Runs it, handing each step to a recorder, and judges it. */
    public Answer answer(Recorder recorder) {
        return answer(simulation.run(recorder));
    }

    /** Runs it as long as the engine would start at every moment, and judges it; empty: at some moment it would not. */
    public Optional<Answer> answerWhileItStarts() {
        return simulation.runWhileItStarts(onlooker).map(this::answer);
    }

    private Answer answer(RunResult result) {
        return new Answer(result, new Judge(simulation.vehicle(), simulation.scene(), requirements).judge(result));
    }
}
