package curbwatt.engine.simulation;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryCondition;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.control.AutomaticStart;
import curbwatt.engine.control.HighIdleControl;
import curbwatt.engine.control.IdleTrigger;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.link.BatteryLink;
import curbwatt.engine.load.DropOut;
import curbwatt.engine.load.FlashClock;
import curbwatt.engine.load.Inrush;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.OnInterval;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.AuxiliaryBattery;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.BusNode;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.EngineEquipment;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.engine.wiring.FuseRating;
import curbwatt.engine.wiring.FuseType;
import curbwatt.engine.wiring.InstalledFuse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;

/** Any vehicle in any scene, drawn from a seed: all kinds of loads, links and devices. */
final class RandomScenes {

    private static final String[] CIRCUITS = {"lamps", "radios", "tools"};
    private static final Set<String> STAGES = Set.of("blocking");
    private static final double[] EXPONENTS = {-1, 0, 0.55, 1};
    private static final double[] FUSES_A = {3, 5, 7.5, 10, 15, 20};

    private final Random random;
    private final double slowedFactor;
    private final double rarestDutyS;

    private RandomScenes(long seed, double slowedFactor, double rarestDutyS) {
        random = new Random(seed);
        this.slowedFactor = slowedFactor;
        this.rarestDutyS = rarestDutyS;
    }

    static Simulation of(long seed) {
        return slowed(seed, 1);
    }

    /** The same vehicle with its flashes so many times as slow. */
    static Simulation slowed(long seed, double factor) {
        return new RandomScenes(seed, factor, 300).simulation();
    }

    /** The same with all that comes at intervals of its own, as a radio's calls do, within a minute. */
    static Simulation calling(long seed) {
        return new RandomScenes(seed, 1, 65).simulation();
    }

    private Simulation simulation() {
        boolean two = random.nextInt(3) == 0;
        BatteryInstallation battery = installation("battery");
        List<Circuit> circuits = new ArrayList<>();
        for (String name : CIRCUITS) {
            circuits.add(circuit(name, two && random.nextInt(3) > 0 ? BusNode.EQUIPMENT : BusNode.STARTER));
        }
        Vehicle vehicle = new Vehicle(
                "truck",
                battery,
                two
                        ? Optional.of(new AuxiliaryBattery(
                                installation("auxiliary battery"), between(0.4, 1), "link", link()))
                        : Optional.empty(),
                random.nextInt(4) > 0 ? Optional.of(Vehicles.alternator(between(40, 90), 150, 2.7)) : Optional.empty(),
                circuits,
                cutoffs(two),
                Vehicles.starting(),
                new EngineEquipment(
                        random.nextInt(3) == 0 ? Optional.of(idleControl()) : Optional.empty(),
                        random.nextInt(4) == 0 ? Optional.of(automaticStart()) : Optional.empty(),
                        Optional.empty()));
        return Simulation.of(vehicle, scene());
    }

    private BatteryInstallation installation(String name) {
        Chemistry chemistry = random.nextBoolean() ? Chemistry.FLOODED : Chemistry.AGM;
        double c20Ah = between(40, 110);
        Battery fitted = Vehicles.battery(chemistry, c20Ah, 0.83 * Math.pow(c20Ah, 1.17), c20Ah * between(7, 10));
        BatteryCondition condition = new BatteryCondition(between(0.6, 1), between(1, 1.6), 0.03);
        return new BatteryInstallation(name, new Battery(fitted.parameters(), condition), 18000);
    }

    private Circuit circuit(String name, BusNode node) {
        List<Load> loads = new ArrayList<>();
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            loads.add(load(name + " " + i));
        }
        Optional<InstalledFuse> fuse = random.nextInt(4) == 0
                ? Optional.of(new InstalledFuse(
                        new FuseRating(FuseType.BLADE, FUSES_A[random.nextInt(FUSES_A.length)]), between(-10, 50)))
                : Optional.empty();
        return new Circuit(name, node, random.nextInt(4) * 0.01, fuse, loads);
    }

    private Load load(String name) {
        double exponent = EXPONENTS[random.nextInt(EXPONENTS.length)];
        DropOut dropOut = random.nextInt(6) == 0 ? DropOut.at(between(10, 12)) : DropOut.never();
        Set<String> stages = random.nextInt(4) == 0 ? STAGES : Set.of();
        Inrush inrush = random.nextInt(5) == 0 ? new Inrush(between(1.5, 5), between(0.01, 0.15)) : Inrush.none();
        double standbyA = random.nextInt(4) == 0 ? 0.05 : 0;
        LoadPattern pattern = pattern();
        double ratedA = pattern instanceof LoadPattern.Continuous ? between(0.3, 6) : between(1, 14);
        return new Load(name, ratedA, 12.8, exponent, standbyA, dropOut, pattern, stages, inrush, 1);
    }

    private LoadPattern pattern() {
        switch (random.nextInt(8)) {
            case 0, 1, 2 -> {
                return new LoadPattern.Continuous();
            }
            case 3 -> {
                return new LoadPattern.Duty(between(0.5, 20), between(25, rarestDutyS), between(0, 20), between(0, 1));
            }
            case 4 -> {
                return new LoadPattern.RandomDuty(between(1, 10), between(20, 200), between(0, 1), random.nextInt(99));
            }
            default -> {
                double periodMs = slowedFactor * (400 + 50.0 * random.nextInt(25));
                FlashClock clock = new FlashClock("clock " + periodMs, periodMs);
                double firstMs = 0.1 * periodMs * (1 + random.nextInt(4));
                List<OnInterval> lit = random.nextBoolean()
                        ? List.of(new OnInterval(0, firstMs))
                        : List.of(
                                new OnInterval(0, 0.5 * firstMs),
                                new OnInterval(0.6 * periodMs, 0.6 * periodMs + 0.5 * firstMs));
                return new LoadPattern.Flashing(clock, lit, 0.1 * periodMs * random.nextInt(10));
            }
        }
    }

    private BatteryLink link() {
        return switch (random.nextInt(4)) {
            case 0 -> new BatteryLink.Solid(between(0, 0.004));
            case 1 -> new BatteryLink.ChargeRelay(13.3, 10, 12.8, 30, 0.004);
            case 2 -> new BatteryLink.Diode(0.6, 0.003);
            default -> new BatteryLink.DcDcCharger(30, 14.4, 0.9, 13.2, 5, 12.6, 5);
        };
    }

    private List<LowVoltageCutoff> cutoffs(boolean two) {
        List<LowVoltageCutoff> cutoffs = new ArrayList<>();
        int count = random.nextInt(3);
        for (int i = 0; i < count; i++) {
            double tripV = between(11.3, 12.5);
            SensePoint sense = switch (random.nextInt(3)) {
                case 0 -> new SensePoint.FeedEnd(CIRCUITS[i]);
                case 1 -> two ? new SensePoint.EquipmentNode() : new SensePoint.Node();
                default -> new SensePoint.Node();
            };
            RecloseRule reclose = switch (random.nextInt(3)) {
                case 0 -> new RecloseRule.ByHand();
                case 1 -> new RecloseRule.EngineRunning();
                default -> new RecloseRule.AboveVoltage(tripV + between(0.3, 1), between(10, 60));
            };
            cutoffs.add(new LowVoltageCutoff(
                    "cutoff " + i,
                    sense,
                    random.nextBoolean() ? 0 : between(0.2, 30),
                    random.nextBoolean() ? 0 : between(-0.1, 0.1),
                    random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(tripV + between(0, 0.3)),
                    tripV,
                    random.nextInt(4) == 0 ? 0 : between(0.2, 120),
                    reclose,
                    random.nextInt(5) == 0 ? OptionalDouble.of(between(200, 2000)) : OptionalDouble.empty(),
                    Set.of(CIRCUITS[i])));
        }
        return cutoffs;
    }

    private HighIdleControl idleControl() {
        IdleTrigger trigger = random.nextBoolean()
                ? new IdleTrigger.BelowVoltage(new SensePoint.Node(), between(12.5, 13.5), 14)
                : new IdleTrigger.Discharging(between(1, 15), between(-10, 0));
        return new HighIdleControl("idle control", trigger, between(0, 10), between(0, 60), between(30, 120), 1300);
    }

    private AutomaticStart automaticStart() {
        return new AutomaticStart(
                "starter box",
                new SensePoint.Node(),
                between(11.8, 12.4),
                between(0, 60),
                300,
                random.nextBoolean() ? OptionalDouble.of(between(3, 30)) : OptionalDouble.empty(),
                20,
                OptionalDouble.of(between(300, 900)),
                900);
    }

    private Scene scene() {
        int phases = 1 + random.nextInt(3);
        double longestS = (random.nextInt(20) == 0 ? 3600.0 : 600.0) / phases;
        Phase[] all = new Phase[phases];
        for (int i = 0; i < phases; i++) {
            all[i] = phase("phase " + i, between(0.2 * longestS, longestS));
        }
        return Vehicles.scene(between(0.35, 1), between(-15, 40), all);
    }

    private Phase phase(String name, double lengthS) {
        Set<String> stages = random.nextBoolean() ? STAGES : Set.of();
        double airC = between(-20, 40);
        return switch (random.nextInt(5)) {
            case 0 ->
                new Phase(name, EngineMode.DRIVING, lengthS, airC, EngineSpeed.constant(between(1200, 2500)), stages);
            case 1 ->
                new Phase(name, EngineMode.IDLING, lengthS, airC, EngineSpeed.constant(between(600, 900)), stages);
            default -> new Phase(name, EngineMode.OFF, lengthS, airC, EngineSpeed.constant(0), stages);
        };
    }

    private double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }
}
