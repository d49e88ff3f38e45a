package curbwatt.engine.study.idle;

import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.powertrain.FuelRate;
import curbwatt.engine.result.BatterySummary;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.vehicle.AuxiliaryBattery;
import curbwatt.engine.vehicle.BatteryInstallation;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Fuel that standing costs: what the engine burns while the vehicle stands, electricity on the road included, and what
 * it takes later to bring the batteries back to where they began. What turns the wheels is left out; it is the same in
 * all ways.
 *
 * @param simulation what was run
 * @param result what came out of it
 */
record StandingFuel(Simulation simulation, RunResult result) {

    private static final double S_PER_H = 3600;
    private static final double WITHOUT_ALTERNATOR_V = 14.2;
    private static final double REGULATOR_REFERENCE_C = 25;

    /** Fuel of the scene as it was run, the drives' own burn taken out, and what is owed (L); empty: not known. */
    OptionalDouble litres() {
        OptionalDouble all = result.engine().fuelLitres();
        if (all.isEmpty()) {
            return all;
        }
        return OptionalDouble.of(all.getAsDouble() - drivingLitres() + owedLitres());
    }

    /** Fuel that brings the batteries back to the charge at the scene's start (L); negative: they have more. */
    double owedLitres() {
        double voltageV = simulation
                .vehicle()
                .alternator()
                .map(machine -> machine.regulator().setPointV(REGULATOR_REFERENCE_C))
                .orElse(WITHOUT_ALTERNATOR_V);
        double owedAh = 0;
        List<BatteryInstallation> places = places();
        for (int i = 0; i < places.size(); i++) {
            BatterySummary battery = result.batteries().get(i);
            owedAh += places.get(i).battery().capacityAh()
                    * (battery.startChargeFraction() - battery.endChargeFraction());
        }
        return fuel().electricalLitresPerH(owedAh * voltageV);
    }

    /** Time in which the engine ran while the vehicle stood (s). */
    double engineS() {
        double drivingS = 0;
        List<Phase> phases = simulation.scene().phases();
        for (int i = 0; i < phases.size(); i++) {
            if (isDriven(phases.get(i), i)) {
                drivingS += phases.get(i).durationS();
            }
        }
        return Math.max(0, result.engine().runS() - drivingS);
    }

    private boolean isDriven(Phase phase, int place) {
        return phase.mode() == EngineMode.DRIVING && result.phases().get(place).engineRan();
    }

    /** What the engine would burn on the drives if it stood and turned at their speeds (L). */
    private double drivingLitres() {
        double litres = 0;
        List<Phase> phases = simulation.scene().phases();
        for (int i = 0; i < phases.size(); i++) {
            if (isDriven(phases.get(i), i)) {
                litres += burnedLitres(phases.get(i).speed(), phases.get(i).durationS());
            }
        }
        return litres;
    }

    /** Speed runs straight between its points, and so does the burn between the points of its own table. */
    private double burnedLitres(EngineSpeed speed, double durationS) {
        double litres = 0;
        double fromS = 0;
        while (fromS < durationS) {
            double toS = Math.min(durationS, speed.nextPointS(fromS));
            litres += 0.5 * (burn(speed, fromS) + burn(speed, toS)) * (toS - fromS) / S_PER_H;
            fromS = toS;
        }
        return litres;
    }

    private double burn(EngineSpeed speed, double timeS) {
        return fuel().idle().atLitresPerH(speed.atRpm(timeS));
    }

    private FuelRate fuel() {
        return simulation.vehicle().engine().fuel().orElseThrow();
    }

    private List<BatteryInstallation> places() {
        List<BatteryInstallation> places = new ArrayList<>();
        places.add(simulation.vehicle().battery());
        simulation.vehicle().auxiliary().map(AuxiliaryBattery::installation).ifPresent(places::add);
        return places;
    }
}
