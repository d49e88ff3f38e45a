package curbwatt.engine.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.label.LfpFit;
import curbwatt.engine.battery.label.LfpLabel;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.link.BatteryLink;
import curbwatt.engine.protection.PackProtection;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.vehicle.AuxiliaryBattery;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.BusNode;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** An iron-phosphate auxiliary battery with its own protection beside a lead starter battery. */
class PackTest {

    private static final Battery PACK =
            new Battery(LfpFit.of(LfpLabel.ofTwentyHours(100, 0.015)), Vehicles.NEW_WITHOUT_SELF_DISCHARGE);
    private static final BatteryLink CHARGER = new BatteryLink.DcDcCharger(30, 14.4, 0.9, 13.2, 5, 12.6, 5);

    private static Vehicle vehicle(BatteryLink link, double charge, double equipmentA) {
        return new Vehicle(
                "truck",
                new BatteryInstallation("starter battery", Vehicles.flooded70(), 18000),
                Optional.of(new AuxiliaryBattery(
                        new BatteryInstallation("pack", PACK, 3600),
                        charge,
                        Optional.of(PackProtection.usual(100, 100)),
                        "link",
                        link)),
                Optional.of(Vehicles.alternator(80, 160, 2.7)),
                List.of(
                        new Circuit("chassis", 0, List.of(Vehicles.steady("chassis", 3, 1))),
                        new Circuit(
                                "equipment",
                                BusNode.EQUIPMENT,
                                0.005,
                                List.of(Vehicles.steady("equipment", equipmentA, -1)))),
                List.of(),
                Vehicles.starting());
    }

    private static List<Event> of(RunResult run, EventKind kind) {
        return run.events().stream().filter(event -> event.kind() == kind).toList();
    }

    @Test
    void takesNoChargeBelowFreezing() {
        Scene cold = Vehicles.scene(0.9, -5, Vehicles.driving(1800, -5, 1800));
        RunResult run = Simulation.of(vehicle(CHARGER, 0.5, 5), cold).run(Recorder.none());
        assertThat(of(run, EventKind.PACK_STOPPED)).extracting(Event::subject).containsExactly("pack: charge cold");
        assertThat(run.batteries().get(1).endChargeFraction()).isCloseTo(0.5, within(1e-3));
        assertThat(run.link().orElseThrow().peakA()).isLessThan(30.1);
        assertThat(run.charge().nodeRemainderAh())
                .isCloseTo(0, within(1e-9 * run.charge().alternatorAh()));
    }

    @Test
    void chargesOnceItIsWarmEnough() {
        Scene thaw = Vehicles.scene(0.9, -5, Vehicles.driving(6 * 3600, 15, 1800));
        RunResult run = Simulation.of(vehicle(CHARGER, 0.5, 5), thaw).run(Recorder.none());
        assertThat(of(run, EventKind.PACK_RELEASED)).extracting(Event::subject).containsExactly("pack: charge cold");
        assertThat(run.batteries().get(1).endChargeFraction()).isGreaterThan(0.9);
    }

    @Test
    void cutsItselfOffWhenEmpty() {
        Scene standing = Vehicles.scene(0.9, 20, Vehicles.off(6 * 3600, 20));
        RunResult run = Simulation.of(vehicle(CHARGER, 0.5, 20), standing).run(Recorder.none());
        assertThat(of(run, EventKind.PACK_STOPPED).get(0).subject()).isEqualTo("pack: under voltage");
        assertThat(run.batteries().get(1).endChargeFraction()).isBetween(0.0, 0.1);
        assertThat(run.batteries().get(0).endChargeFraction()).isGreaterThan(0.6);
    }

    /** Full and joined by a relay: the pack takes nothing, and its node floats at what comes through the contact. */
    @Test
    void floatsWhenFull() {
        BatteryLink relay = new BatteryLink.ChargeRelay(13.3, 5, 12.8, 30, 0.01);
        Scene drive = Vehicles.scene(0.9, 20, Vehicles.driving(3600, 20, 1800));
        double[] linkA = {0};
        double[] nodeV = {0};
        RunResult run = Simulation.of(vehicle(relay, 1, 10), drive).run(step -> {
            linkA[0] = step.linkA();
            nodeV[0] = step.equipmentEndV();
        });
        assertThat(nodeV[0]).isBetween(13.9, 14.3);
        assertThat(linkA[0]).isCloseTo(12.8 * 10 / (nodeV[0] - 0.05), within(0.2));
        assertThat(run.batteries().get(1).endChargeFraction()).isCloseTo(1, within(2e-3));
        assertThat(run.energy().remainderWh())
                .isCloseTo(0, within(1e-4 * run.energy().alternatorWh()));
    }
}
