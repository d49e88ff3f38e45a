package curbwatt.engine.simulation.record;

import curbwatt.engine.result.BatteryDay;
import curbwatt.engine.result.DayRow;
import java.util.ArrayList;
import java.util.List;

/**
 * Keeps one line for each twenty-four hours, and of the state of charge the points at which it turns.
 *
 * <p>What it holds grows with the days, not with the steps. A step belongs to the day of its middle.
 */
public final class DayRecorder implements Recorder {

    private static final double DAY_S = 86400;

    private final List<DayRow> rows = new ArrayList<>();
    private final BatteryDayBook starter = new BatteryDayBook();
    private final BatteryDayBook auxiliary = new BatteryDayBook();
    private boolean begun;
    private boolean two;
    private int day = 1;
    private double engineRunS;
    private double fuelLitres;
    private double beforeRunS;
    private double beforeLitres;

    @Override
    public void record(Step step) {
        if (!begun) {
            begun = true;
            two = step.hasEquipmentNode();
            starter.add(0, 0, step.chargeStartFraction());
        }
        int stepsDay = 1 + (int) (0.5 * (step.startS() + step.endS()) / DAY_S);
        if (stepsDay > day) {
            rows.add(row());
            starter.nextDay();
            auxiliary.nextDay();
            beforeRunS = engineRunS;
            beforeLitres = fuelLitres;
            day = stepsDay;
        }
        starter.add(step.dischargedAs(), step.chargedAs(), step.chargeEndFraction());
        if (two) {
            auxiliary.add(step.auxiliaryDischargedAs(), step.auxiliaryChargedAs(), step.auxiliaryChargeEndFraction());
        }
        engineRunS = step.engineRunS();
        fuelLitres = step.fuelLitres();
    }

    private DayRow row() {
        List<BatteryDay> batteries = two ? List.of(starter.day(), auxiliary.day()) : List.of(starter.day());
        return new DayRow(day, batteries, engineRunS - beforeRunS, fuelLitres - beforeLitres);
    }

    /** The days so far, the last one as far as it has come; empty before the first step. */
    public List<DayRow> rows() {
        List<DayRow> all = new ArrayList<>(rows);
        if (begun) {
            all.add(row());
        }
        return List.copyOf(all);
    }

    /**
     * States of charge at which a battery turned up to the end of a day, with its first and last.
     *
     * @param battery 0 the starter battery, 1 the auxiliary one
     * @param toDay which day, from 1
     */
    public List<Double> turnFractions(int battery, int toDay) {
        return (battery == 0 ? starter : auxiliary).turns(toDay);
    }
}
