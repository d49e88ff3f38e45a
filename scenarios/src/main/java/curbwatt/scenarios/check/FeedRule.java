package curbwatt.scenarios.check;

import curbwatt.scenarios.file.FeedEntry;
import curbwatt.scenarios.file.ReturnWord;
import curbwatt.scenarios.file.ScenarioFile;
import java.util.ArrayList;
import java.util.List;

/** A feed is described in one way, and completely. */
final class FeedRule implements Rule {

    @Override
    public void look(ScenarioFile file, Findings findings) {
        file.vehicle()
                .ifPresent(vehicle ->
                        vehicle.circuits().forEach(circuit -> circuit.feed().ifPresent(feed -> look(feed, findings))));
    }

    private static void look(FeedEntry feed, Findings findings) {
        if (findings.isTouched(feed.place())) {
            return;
        }
        List<String> ways = new ArrayList<>();
        feed.resistanceMilliohm().ifPresent(value -> ways.add("resistanceMilliohm"));
        feed.awg().ifPresent(value -> ways.add("awg"));
        feed.areaMm2().ifPresent(value -> ways.add("areaMm2"));
        if (ways.size() != 1) {
            findings.error(
                    feed.place(),
                    ways.isEmpty()
                            ? "The feed says neither its resistance nor its wire."
                            : "The feed is described in " + ways.size() + " ways: " + String.join(", ", ways) + ".",
                    "Give resistanceMilliohm, or awg with lengthM, or areaMm2 with lengthM.");
            return;
        }
        boolean wire = feed.resistanceMilliohm().isEmpty();
        if (wire && feed.lengthM().isEmpty()) {
            findings.error(
                    feed.place().key("lengthM"), "The wire has no length.", "Add lengthM, one way (0 to 100 m).");
        }
        if (!wire && feed.lengthM().isPresent()) {
            findings.warning(
                    feed.place().key("lengthM"),
                    "lengthM has no effect beside resistanceMilliohm.",
                    "Remove it, or give the wire instead of the resistance.");
        }
        chassis(feed, wire, findings);
    }

    private static void chassis(FeedEntry feed, boolean wire, Findings findings) {
        boolean byChassis =
                feed.returnBy().filter(way -> way == ReturnWord.CHASSIS).isPresent();
        if (wire && byChassis && feed.chassisMilliohm().isEmpty()) {
            findings.error(
                    feed.place().key("chassisMilliohm"),
                    "The current comes back by the chassis, but chassisMilliohm is missing.",
                    "Add the resistance of that way, joints included (0 to 1000 mΩ); a few mΩ where joints are sound.");
        }
        if (!byChassis && feed.chassisMilliohm().isPresent()) {
            findings.error(
                    feed.place().key("chassisMilliohm"),
                    "chassisMilliohm is given, but the current comes back by a wire.",
                    "Write \"returnBy\": \"chassis\", or remove it.");
        }
    }
}
