package curbwatt.scenarios.assemble;

import curbwatt.engine.link.BatteryLink;
import curbwatt.engine.protection.PackProtection;
import curbwatt.engine.vehicle.AuxiliaryBattery;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.scenarios.file.AuxiliaryEntry;
import curbwatt.scenarios.file.BatteryEntry;
import curbwatt.scenarios.file.LinkEntry;
import curbwatt.scenarios.file.StartEntry;
import java.util.Optional;

/**
 * From complete entries to a second battery and its link.
 *
 * @param guarded catches what the engine refuses
 * @param batteries makes the battery
 */
record AuxiliaryAssembler(Guarded guarded, BatteryAssembler batteries) {
    private static final String ROLE = "auxiliary battery";
    private static final double PERCENT = 100;
    private static final double OHM_PER_MILLIOHM = 1e-3;

    /** Returns the battery with its link, charged as the scene says. */
    AuxiliaryBattery auxiliary(AuxiliaryEntry entry, Optional<StartEntry> start) {
        BatteryEntry label = entry.battery().orElseThrow();
        BatteryInstallation battery = batteries.installation(ROLE, ROLE, label);
        Optional<PackProtection> protection = batteries.protection(ROLE, label);
        LinkEntry link = entry.link().orElseThrow();
        double chargePercent = start.flatMap(StartEntry::auxiliaryChargePercent).orElse(PERCENT);
        return guarded.build(
                link.place(),
                () -> new AuxiliaryBattery(
                        battery,
                        chargePercent / PERCENT,
                        protection,
                        link.name().orElse(link.kind().orElseThrow().toString()),
                        link(link)));
    }

    private static BatteryLink link(LinkEntry entry) {
        return switch (entry.kind().orElseThrow()) {
            case SOLID -> new BatteryLink.Solid(resistanceOhm(entry));
            case CHARGE_RELAY ->
                new BatteryLink.ChargeRelay(
                        entry.closeV().orElseThrow(),
                        entry.closeDelayS().orElse(0.0),
                        entry.openV().orElseThrow(),
                        entry.openDelayS().orElse(0.0),
                        resistanceOhm(entry));
            case DIODE -> new BatteryLink.Diode(entry.forwardV().orElseThrow(), resistanceOhm(entry));
            case DC_DC_CHARGER ->
                new BatteryLink.DcDcCharger(
                        entry.limitA().orElseThrow(),
                        entry.outputV().orElseThrow(),
                        entry.efficiencyPercent().orElseThrow() / PERCENT,
                        entry.startV().orElseThrow(),
                        entry.startDelayS().orElse(0.0),
                        entry.stopV().orElseThrow(),
                        entry.stopDelayS().orElse(0.0));
        };
    }

    private static double resistanceOhm(LinkEntry entry) {
        return entry.resistanceMilliohm().orElseThrow() * OHM_PER_MILLIOHM;
    }
}
