package curbwatt.engine.bench;

import curbwatt.engine.simulation.Fidelity;
import java.io.IOException;
import java.util.List;
import java.util.Map;

/** The chapter on what a run's cost depends on, where its time goes, and what the floor is. */
final class CostChapter {

    private static final double LEAST_SHARE = 0.01;
    private static final double PROFILE_S = 12;

    private final Laboratory laboratory;
    private final double longStepsMs;

    CostChapter(Laboratory laboratory, double longStepsMs) {
        this.laboratory = laboratory;
        this.longStepsMs = longStepsMs;
    }

    void writeCurves(Page page) {
        FlashingScene standard = FlashingScene.standard();
        page.say("## What the cost depends on");
        page.say("The eight-hour scene at other flash rates; the steps stand beside the times.");
        heads(page, "cycles a second");
        List<Measured> rates = laboratory.rates();
        for (double flashHz : Laboratory.RATES_HZ) {
            row(page, rates, "flashHz", flashHz, new FlashingScene(standard.loads(), flashHz, standard.durationH()));
        }
        page.end();
        page.say("The same with other numbers of loads, nearly a third of them flashing, that draw the same together.");
        heads(page, "loads");
        List<Measured> numbers = laboratory.loads();
        for (int loads : Laboratory.LOADS) {
            row(page, numbers, "loads", loads, new FlashingScene(loads, standard.flashHz(), standard.durationH()));
        }
        page.end();
    }

    private static void heads(Page page, String what) {
        page.table(what, "long steps: number", "time", "edge by edge: number", "time", "ratio");
    }

    private static void row(Page page, List<Measured> all, String parameter, Object value, FlashingScene scene) {
        double longMs = ms(all, parameter, value, Fidelity.ENVELOPE);
        double edgesMs = ms(all, parameter, value, Fidelity.RESOLVED);
        page.row(
                value.toString(),
                String.valueOf(scene.run(Fidelity.ENVELOPE).steps()),
                Page.figure(longMs) + " ms",
                String.valueOf(scene.run(Fidelity.RESOLVED).steps()),
                Page.figure(edgesMs) + " ms",
                Page.figure(edgesMs / longMs));
    }

    private static double ms(List<Measured> all, String parameter, Object value, Fidelity fidelity) {
        return all.stream()
                .filter(one -> one.is("run", parameter, value) && one.is("run", "fidelity", fidelity))
                .findFirst()
                .orElseThrow()
                .ms();
    }

    void writeProfile(Page page) throws IOException {
        Profile profile = Profile.ofLongSteps(PROFILE_S * laboratory.patience());
        page.say("## Where the time goes");
        page.say(
                "The long-step run of the eight-hour scene under the flight recorder: %d samples, counted where they were found "
                        + "(a method's callees are not its own; one that the compiler has built into its caller keeps its name).",
                profile.samples());
        shares(page, "package", profile.packages());
        shares(page, "method", profile.methods());
    }

    private static void shares(Page page, String what, List<Profile.Share> shares) {
        page.table(what + ", from 1 %", "share");
        shares.stream()
                .filter(share -> share.fraction() >= LEAST_SHARE)
                .forEach(share -> page.row("`" + share.name() + "`", Page.figure(100 * share.fraction()) + " %"));
        page.end();
    }

    void writeFloor(Page page) {
        Map<String, Long> calls = CountingLoader.callsInLongSteps();
        long steps = FlashingScene.standard().run(Fidelity.ENVELOPE).steps();
        List<Measured> functions = laboratory.functions();
        page.say("## The floor");
        page.say(
                "The equations need their functions, whatever else is saved. Counted in one long-step run (%d steps), "
                        + "each at what a call of it takes in a row of independent ones:",
                steps);
        page.table("function", "calls", "for each step", "one call", "all of them");
        double floorMs = 0;
        for (Map.Entry<String, Long> call : calls.entrySet()) {
            double ns = functions.stream()
                    .filter(one -> one.method().equals(call.getKey()))
                    .mapToDouble(Measured::score)
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("no benchmark of " + call.getKey()));
            double ms = call.getValue() * ns / 1e6;
            floorMs += ms;
            page.row(
                    call.getKey(),
                    String.valueOf(call.getValue()),
                    Page.figure((double) call.getValue() / steps),
                    Page.figure(ns) + " ns",
                    Page.figure(ms) + " ms");
        }
        page.end();
        page.say(
                "Together %s ms. The run takes %s ms: **%s times** that floor.",
                Page.figure(floorMs), Page.figure(longStepsMs), Page.figure(longStepsMs / floorMs));
    }
}
