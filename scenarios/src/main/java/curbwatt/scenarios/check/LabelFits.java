package curbwatt.scenarios.check;

import curbwatt.engine.battery.label.BatteryLabel;
import curbwatt.engine.battery.label.FittedLabel;
import curbwatt.engine.battery.label.LabelFit;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Fits labels, each once: a scenario's labels are looked at by the check and by the assembly, and a scenario that is edited is
 * read again and again with the same ones.
 */
public final class LabelFits {

    /** More than the catalogue and a scenario have; beyond, it begins anew. */
    private static final int MOST = 256;

    private final Map<BatteryLabel, FittedLabel> fitted = new ConcurrentHashMap<>();

    /**
     * Fits a label, as {@link LabelFit#of} does.
     *
     * @throws IllegalArgumentException if its figures contradict each other
     */
    public FittedLabel of(BatteryLabel label) {
        if (fitted.size() >= MOST) {
            fitted.clear();
        }
        return fitted.computeIfAbsent(label, LabelFit::of);
    }
}
