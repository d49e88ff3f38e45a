/**
 * From the label on a battery to its parameters, and back.
 *
 * <p>{@link curbwatt.engine.battery.label.LabelFit} finds the battery that passes the tests its
 * {@link curbwatt.engine.battery.label.BatteryLabel} speaks of: 20 h capacity, reserve capacity, cold cranking.
 * {@link curbwatt.engine.battery.label.LfpFit} does the same for an LFP pack, which has a capacity and a resistance.
 * {@link curbwatt.engine.battery.label.LabelTestRun} runs those tests on any battery, and
 * {@link curbwatt.engine.battery.label.DischargeCurve} draws a discharge. Constant current from full has a closed form,
 * so nothing here steps through time.
 *
 * <p>Self-discharge is left out: a label's figures have it inside.
 */
package curbwatt.engine.battery.label;
