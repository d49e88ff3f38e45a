package curbwatt.scenarios.assemble;

import curbwatt.engine.wiring.WireGauge;
import curbwatt.engine.wiring.WireMaterial;
import curbwatt.engine.wiring.WireRun;
import curbwatt.scenarios.file.FeedEntry;
import curbwatt.scenarios.file.MaterialWord;
import curbwatt.scenarios.file.ReturnWord;

/** Resistance of a feed, out and back. */
final class FeedResistance {
    private static final double USUAL_WIRE_C = 40;
    private static final double OHM_PER_MILLIOHM = 1e-3;

    private FeedResistance() {}

    /** Returns the resistance (Ω). */
    static double loopOhm(FeedEntry feed) {
        if (feed.resistanceMilliohm().isPresent()) {
            return feed.resistanceMilliohm().get() * OHM_PER_MILLIOHM;
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
        return new WireRun(areaMm2, feed.lengthM().orElseThrow(), back, material)
                .loopOhm(feed.wireC().orElse(USUAL_WIRE_C));
    }

    /** {@code 8} is gauge 8, {@code 4/0} is gauge −3. */
    private static WireGauge gauge(String awg) {
        return awg.endsWith("/0")
                ? new WireGauge(1 - Integer.parseInt(awg.substring(0, awg.length() - 2)))
                : new WireGauge(Integer.parseInt(awg));
    }
}
