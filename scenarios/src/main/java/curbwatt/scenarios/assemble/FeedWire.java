package curbwatt.scenarios.assemble;

import curbwatt.engine.wiring.WireGauge;
import curbwatt.engine.wiring.WireMaterial;
import curbwatt.engine.wiring.WireRun;
import curbwatt.scenarios.file.FeedEntry;
import curbwatt.scenarios.file.MaterialWord;
import curbwatt.scenarios.file.ReturnWord;
import java.util.Optional;

/** The wire of a feed, and its resistance out and back. */
final class FeedWire {
    private static final double USUAL_WIRE_C = 40;
    private static final double OHM_PER_MILLIOHM = 1e-3;

    private FeedWire() {}

    /** Returns the resistance (Ω). */
    static double loopOhm(FeedEntry feed) {
        return run(feed)
                .map(wire -> wire.loopOhm(conductorC(feed)))
                .orElseGet(() -> feed.resistanceMilliohm().orElseThrow() * OHM_PER_MILLIOHM);
    }

    /** Returns the wire; empty if the feed is given by its resistance. */
    static Optional<WireRun> run(FeedEntry feed) {
        if (feed.resistanceMilliohm().isPresent()) {
            return Optional.empty();
        }
        double areaMm2 =
                feed.areaMm2().orElseGet(() -> gauge(feed.awg().orElseThrow()).areaMm2());
        boolean chassis =
                feed.returnBy().filter(way -> way == ReturnWord.CHASSIS).isPresent();
        WireRun.Return back = chassis
                ? new WireRun.Return.Chassis(feed.chassisMilliohm().orElseThrow() * OHM_PER_MILLIOHM)
                : new WireRun.Return.SameWire();
        WireMaterial material = switch (feed.material().orElse(MaterialWord.COPPER)) {
            case COPPER -> WireMaterial.COPPER;
            case ALUMINIUM -> WireMaterial.ALUMINIUM;
        };
        return Optional.of(new WireRun(areaMm2, feed.lengthM().orElseThrow(), back, material));
    }

    /** Returns the temperature of the conductor (°C). */
    static double conductorC(FeedEntry feed) {
        return feed.wireC().orElse(USUAL_WIRE_C);
    }

    /** {@code 8} is gauge 8, {@code 4/0} is gauge −3. */
    private static WireGauge gauge(String awg) {
        return awg.endsWith("/0")
                ? new WireGauge(1 - Integer.parseInt(awg.substring(0, awg.length() - 2)))
                : new WireGauge(Integer.parseInt(awg));
    }
}
