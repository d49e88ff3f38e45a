package curbwatt.engine.bench;

import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.simulation.Fidelity;

/** The chapter on one run of the standard scene, with what the three ways computed. */
final class SceneChapter {

    private static final double WANTED_MS = 0.3;
    private static final double MOST_MS = 1;
    private static final double OVER_EDGES = 50;
    private static final double OVER_INTEGRATOR = 100;

    private final Measured longSteps;
    private final Measured edges;
    private final Measured integrator;

    SceneChapter(Laboratory laboratory) {
        longSteps = laboratory.scene().get(0);
        edges = laboratory.sceneByEdges().get(0);
        integrator = laboratory.sceneByIntegrator().get(0);
    }

    double longStepsMs() {
        return longSteps.ms();
    }

    void write(Page page) {
        double ms = longSteps.ms();
        double overEdges = edges.ms() / ms;
        double overIntegrator = integrator.ms() / ms;
        page.say("## One run of a flashing scene");
        page.say(
                "Eight hours with the engine off, 20 loads, six of them flashing on two clocks (75 and 94 cycles a minute), "
                        + "air colder than the battery, a cutoff that opens in the last hour. One thread, no trace.");
        page.table("what", "measured", "target", "")
                .row("long steps", Page.figure(ms) + " ms", Page.figure(WANTED_MS) + " ms", Page.met(ms <= WANTED_MS))
                .row("the same", Page.figure(ms) + " ms", "at most 1 ms", Page.met(ms <= MOST_MS))
                .row(
                        "edge by edge over long steps",
                        Page.figure(overEdges) + " ×",
                        "at least 50 ×",
                        Page.met(overEdges >= OVER_EDGES))
                .row(
                        "a general integrator over long steps",
                        Page.figure(overIntegrator) + " ×",
                        "at least 100 ×",
                        Page.met(overIntegrator >= OVER_INTEGRATOR))
                .end();
        page.say(
                "The integrator is `DormandPrince853Integrator` of Commons Math, tolerance 1e-9, with charge removed, bound charges, "
                        + "temperature and filtered reading as its variables; it stops at each flash edge, and its event detection "
                        + "finds the trip level. What the three computed:");
        outcomes(page);
    }

    private void outcomes(Page page) {
        FlashingScene scene = FlashingScene.standard();
        IntegratedScene.Outcome other = new IntegratedScene(scene).run();
        page.table(
                "way",
                "time of a run",
                "steps",
                "cutoff opens",
                "against the integrator",
                "charge at the end",
                "against it");
        for (Fidelity fidelity : Fidelity.values()) {
            RunResult run = scene.run(fidelity);
            double tripS = run.events().stream()
                    .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED)
                    .findFirst()
                    .orElseThrow()
                    .timeS();
            boolean isLong = fidelity == Fidelity.ENVELOPE;
            page.row(
                    isLong ? "long steps" : "edge by edge",
                    Page.figure((isLong ? longSteps : edges).ms()) + " ms",
                    String.valueOf(run.steps()),
                    String.format("%.3f s", tripS),
                    String.format("%+.3g s", tripS - other.tripS()),
                    String.format("%.7f", run.endChargeFraction()),
                    String.format("%+.2g", run.endChargeFraction() - other.endChargeFraction()));
        }
        page.row(
                        "integrator",
                        Page.figure(integrator.ms()) + " ms",
                        other.evaluations() + " evaluations",
                        String.format("%.3f s", other.tripS()),
                        "",
                        String.format("%.7f", other.endChargeFraction()),
                        "")
                .end();
    }
}
