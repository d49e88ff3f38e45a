package curbwatt.engine.study.idle;

import curbwatt.engine.event.EventKind;
import curbwatt.engine.powertrain.Fuel;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Answer;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.idle.money.Usage;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What came of standing in one of the ways.
 *
 * @param way the way
 * @param answer the run
 * @param usage what the scene takes: engine hours and starts of the standing vehicle, fuel of standing and electricity
 * @param owedLitres the part of that fuel that later brings the batteries back (L); empty: fuel is not known
 * @param carbonKg carbon dioxide of that fuel by the European factors (kg); empty: fuel is not known
 */
public record WayOutcome(IdleWay way, Answer answer, Usage usage, OptionalDouble owedLitres, OptionalDouble carbonKg) {

    private static final double S_PER_H = 3600;
    private static final double G_PER_KG = 1000;

    /** Refuses missing parts. */
    public WayOutcome {
        Objects.requireNonNull(way, "way");
        Objects.requireNonNull(answer, "answer");
        Objects.requireNonNull(usage, "usage");
    }

    /** Asks a question in one of the ways. */
    static WayOutcome of(Question question, Standing standing) {
        Question asked = question.of(standing);
        Simulation simulation = asked.simulation();
        Answer answer = asked.answer();
        StandingFuel fuel = new StandingFuel(simulation, answer.result());
        OptionalDouble litres = fuel.litres();
        return new WayOutcome(
                standing.way(),
                answer,
                new Usage(
                        litres,
                        fuel.engineS() / S_PER_H,
                        answer.result().engine().starts()),
                litres.isEmpty() ? litres : OptionalDouble.of(fuel.owedLitres()),
                litres.isEmpty() ? litres : OptionalDouble.of(carbonKg(simulation, litres.getAsDouble())));
    }

    /** Whether everything asked was met, and the engine started each time. */
    public boolean serves() {
        return answer.isMet()
                && answer.result().events().stream().noneMatch(event -> event.kind() == EventKind.ENGINE_DID_NOT_START);
    }

    private static double carbonKg(Simulation simulation, double litres) {
        return simulation.vehicle().engine().fuel().orElseThrow().carbonDioxideGrams(litres, Fuel.CarbonSet.EUROPEAN)
                / G_PER_KG;
    }
}
