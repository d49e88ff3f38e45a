package curbwatt.engine.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryParameters;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.link.BatteryLink;
import curbwatt.engine.load.Load;
import curbwatt.engine.result.BatterySummary;
import curbwatt.engine.result.ChargeLedger;
import curbwatt.engine.result.EnergyLedger;
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
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Two batteries and what joins them: balances, and cases whose answer is known. */
class TwoNodesTest {

    private static final Battery STARTER = Vehicles.flooded70();
    private static final Battery AUXILIARY = Vehicles.agm92();

    private static final List<Load> EQUIPMENT = List.of(
            Vehicles.steady("computer", 6, -1),
            Vehicles.flashing("head 1", 9, 0, 600, 250, 0),
            Vehicles.flashing("head 2", 9, -1, 600, 250, 300));

    private static Vehicle vehicle(BatteryLink link, Battery second, double charge, Optional<Alternator> alternator) {
        return new Vehicle(
                "truck",
                new BatteryInstallation("starter battery", STARTER, 18000),
                Optional.of(new AuxiliaryBattery(
                        new BatteryInstallation("auxiliary battery", second, 18000), charge, "link", link)),
                alternator,
                List.of(
                        new Circuit("chassis", 0, List.of(Vehicles.steady("chassis", 3, 1))),
                        new Circuit("equipment", BusNode.EQUIPMENT, 0.01, EQUIPMENT)),
                List.of(),
                Vehicles.starting());
    }

    static Stream<BatteryLink> links() {
        return Stream.of(
                new BatteryLink.Solid(0),
                new BatteryLink.Solid(0.002),
                new BatteryLink.ChargeRelay(13.3, 10, 12.8, 30, 0.004),
                new BatteryLink.Diode(0.6, 0.003),
                new BatteryLink.Diode(0, 0.002),
                new BatteryLink.DcDcCharger(30, 14.4, 0.9, 13.2, 5, 12.6, 5));
    }

    private static Scene driveAndStand() {
        return Vehicles.scene(
                0.8, 15, Vehicles.driving(900, 15, 1800), Vehicles.off(1800, 15), Vehicles.idling(900, 15, 650));
    }

    @ParameterizedTest
    @MethodSource("links")
    void currentsBalanceAndLedgersClose(BatteryLink link) {
        double[] worstA = {0};
        Optional<Alternator> alternator = Optional.of(Vehicles.alternator(50, 120, 2.7));
        RunResult run = Simulation.of(vehicle(link, AUXILIARY, 0.6, alternator), driveAndStand())
                .run(step -> worstA[0] = Math.max(worstA[0], step.residualA()));
        assertThat(worstA[0]).isLessThan(1e-9);
        ChargeLedger charge = run.charge();
        double scaleAh = charge.alternatorAh() + charge.loadsAh();
        assertThat(charge.batteryRemainderAh()).isCloseTo(0, within(1e-9 * scaleAh));
        assertThat(charge.nodeRemainderAh()).isCloseTo(0, within(1e-9 * scaleAh));
        EnergyLedger energy = run.energy();
        assertThat(energy.remainderWh()).isCloseTo(0, within(1e-5 * energy.alternatorWh()));
        assertThat(energy.linkLossWh()).isGreaterThan(-1e-9);
        assertThat(run.batteries().get(1).endChargeFraction()).isGreaterThan(0.5);
    }

    @Test
    void twoEqualBatteriesOnOneNodeAreOneOfTwiceTheSize() {
        BatteryParameters one = STARTER.parameters();
        Battery twice = new Battery(
                new BatteryParameters(
                        one.chemistry(),
                        2 * one.ratedC20Ah(),
                        2 * one.capacityAh(),
                        2 * one.totalChargeAh(),
                        one.peukertExponent(),
                        one.modes(),
                        one.resistanceOhm() / 2),
                STARTER.condition());
        Scene scene = Vehicles.scene(0.9, 15, Vehicles.off(3 * 3600, 15));
        RunResult two = Simulation.of(vehicle(new BatteryLink.Solid(0), STARTER, 0.9, Optional.empty()), scene)
                .run(Recorder.none(), StepControl.usual(), Fidelity.RESOLVED);
        Vehicle single = Vehicles.vehicle(
                twice,
                List.of(
                        new Circuit("chassis", 0, List.of(Vehicles.steady("chassis", 3, 1))),
                        new Circuit("equipment", 0.01, EQUIPMENT)));
        RunResult whole = Simulation.of(single, scene).run(Recorder.none(), StepControl.usual(), Fidelity.RESOLVED);
        assertThat(two.lowestV()).isCloseTo(whole.lowestV(), within(1e-5));
        for (BatterySummary battery : two.batteries()) {
            assertThat(battery.endChargeFraction()).isCloseTo(whole.endChargeFraction(), within(1e-8));
        }
        assertThat(two.crankChecks().get(0).lowestV())
                .isCloseTo(whole.crankChecks().get(0).lowestV(), within(1e-6));
    }

    @Test
    void aHugeResistanceMakesTwoSeparateRuns() {
        Scene scene = Vehicles.scene(0.9, 15, Vehicles.off(2 * 3600, 15));
        RunResult two = Simulation.of(vehicle(new BatteryLink.Solid(1e6), AUXILIARY, 0.9, Optional.empty()), scene)
                .run(Recorder.none());
        RunResult chassis = Simulation.of(
                        Vehicles.vehicle(
                                STARTER, List.of(new Circuit("chassis", 0, List.of(Vehicles.steady("chassis", 3, 1))))),
                        scene)
                .run(Recorder.none());
        RunResult equipment = Simulation.of(
                        Vehicles.vehicle(AUXILIARY, List.of(new Circuit("equipment", 0.01, EQUIPMENT))), scene)
                .run(Recorder.none());
        assertThat(two.batteries().get(0).endChargeFraction()).isCloseTo(chassis.endChargeFraction(), within(1e-6));
        assertThat(two.batteries().get(1).endChargeFraction()).isCloseTo(equipment.endChargeFraction(), within(1e-6));
        assertThat(two.batteries().get(1).lowestV()).isCloseTo(equipment.lowestV(), within(1e-5));
    }

    @Test
    void aDiodeNeverLetsTheStarterBatteryTakeFromTheAuxiliary() {
        Scene scene = Vehicles.scene(0.5, 15, Vehicles.off(3600, 15));
        RunResult run = Simulation.of(vehicle(new BatteryLink.Diode(0.6, 0.003), AUXILIARY, 1, Optional.empty()), scene)
                .run(Recorder.none());
        assertThat(run.link().orElseThrow().toStarterAh()).isZero();
        assertThat(run.link().orElseThrow().toEquipmentAh()).isZero();
    }

    @Test
    void aRelayClosesAfterItsDelayAndOpensAfterTheEngineStops() {
        BatteryLink relay = new BatteryLink.ChargeRelay(13.3, 10, 12.9, 30, 0.004);
        Optional<Alternator> alternator = Optional.of(Vehicles.alternator(80, 160, 2.7));
        RunResult run = Simulation.of(vehicle(relay, AUXILIARY, 0.6, alternator), driveAndStand())
                .run(Recorder.none());
        List<Event> acts = run.events().stream()
                .filter(event -> event.kind() == EventKind.LINK_CLOSED || event.kind() == EventKind.LINK_OPENED)
                .toList();
        assertThat(acts.get(0).kind()).isEqualTo(EventKind.LINK_CLOSED);
        assertThat(acts.get(0).timeS()).isCloseTo(10, within(0.01));
        assertThat(acts.get(1).kind()).isEqualTo(EventKind.LINK_OPENED);
        assertThat(acts.get(1).timeS()).isCloseTo(930, within(5.0));
    }

    /**
     * An empty auxiliary battery joined to a full starter battery: what flows is bounded by the resistances between.
     */
    @Test
    void theInrushIsBoundedByTheResistances() {
        BatteryLink relay = new BatteryLink.Solid(0.010);
        RunResult run = Simulation.of(
                        vehicle(relay, AUXILIARY, 0.2, Optional.empty()), Vehicles.scene(1, 15, Vehicles.off(60, 15)))
                .run(Recorder.none());
        assertThat(run.link().orElseThrow().peakA()).isBetween(10.0, 12.7 / 0.010);
        assertThat(run.link().orElseThrow().peakA())
                .isLessThan((12.65 - 11.9) / (0.010 + STARTER.parameters().resistanceOhm()) + 30);
    }

    @Test
    void aChargerHoldsItsOutputAndItsLimit() {
        BatteryLink charger = new BatteryLink.DcDcCharger(30, 14.4, 0.9, 13.2, 5, 12.6, 5);
        Optional<Alternator> alternator = Optional.of(Vehicles.alternator(80, 160, 2.7));
        double[] most = {0, 0};
        RunResult run = Simulation.of(
                        vehicle(charger, AUXILIARY, 0.6, alternator),
                        Vehicles.scene(0.8, 15, Vehicles.driving(4 * 3600, 15, 1800)))
                .run(step -> {
                    most[0] = Math.max(most[0], step.linkA());
                    most[1] = Math.max(most[1], step.equipmentEndV());
                });
        assertThat(most[0]).isCloseTo(30, within(1e-9));
        assertThat(most[1]).isCloseTo(14.4, within(1e-9));
        // a tenth of what goes in is lost; what comes out is nine times that
        double outWh = run.link().orElseThrow().toEquipmentAh() * 14.4;
        assertThat(run.energy().linkLossWh()).isBetween(0.9 * outWh / 9, outWh / 9);
        assertThat(run.batteries().get(1).endChargeFraction()).isGreaterThan(0.9);
    }

    /** Constant power at a full auxiliary battery has two voltages for one current; the link decides which. */
    @Test
    void aFullAuxiliaryBatteryBehindARelayStandsAtTheStarterNodesVoltage() {
        BatteryLink relay = new BatteryLink.ChargeRelay(13.3, 10, 12.8, 20, 0.003);
        Vehicle vehicle = new Vehicle(
                "truck",
                new BatteryInstallation("starter battery", STARTER, 18000),
                Optional.of(new AuxiliaryBattery(
                        new BatteryInstallation("auxiliary battery", AUXILIARY, 18000), 0.95, "link", relay)),
                Optional.of(Vehicles.alternator(80, 160, 2.7)),
                List.of(
                        new Circuit("chassis", 0, List.of(Vehicles.steady("chassis", 10, 1))),
                        new Circuit(
                                "equipment",
                                BusNode.EQUIPMENT,
                                0.01,
                                List.of(
                                        Vehicles.steady("inverter", 35, -1),
                                        Vehicles.flashing("head", 8, -1, 500, 200, 0)))),
                List.of(),
                Vehicles.starting());
        double[] worstV = {0};
        RunResult run = Simulation.of(vehicle, Vehicles.scene(0.95, 12, Vehicles.idling(4 * 3600, 12, 900)))
                .run(step -> {
                    if (step.startS() > 11) {
                        double throughV = step.nodeEndV() - 0.003 * step.linkA();
                        worstV[0] = Math.max(worstV[0], Math.abs(throughV - step.equipmentEndV()));
                    }
                });
        assertThat(worstV[0]).isLessThan(0.03);
        assertThat(run.batteries().get(1).endChargeFraction()).isBetween(0.99, 1.00001);
        assertThat(run.events()).noneMatch(event -> event.kind() == EventKind.VOLTAGE_COLLAPSED);
    }
}
