package curbwatt.engine.battery.label;

/**
 * The three figures of a label, all of them there.
 *
 * @param c20Ah 20 h capacity, Ah
 * @param reserveMin reserve capacity, min
 * @param coldCrankingA cold cranking current, A
 */
public record LabelFigures(double c20Ah, double reserveMin, double coldCrankingA) {}
