/**
 * What an iron-phosphate pack's own management lets through: voltage, current and temperature limits, each with its
 * delay and
 * its release.
 *
 * <p>{@link curbwatt.engine.protection.PackProtection} holds the settings,
 * {@link curbwatt.engine.protection.ProtectionState} what the protection remembers, and
 * {@code protection.next(state, reading, durationS)} moves the one by the other: a pure function. The state says
 * whether the pack
 * may be charged and discharged, and for which reasons not.
 *
 * <p>Not here: the switches' resistance (it belongs to the label's), balancing of the cells, the short-circuit switch
 * that acts
 * within a millisecond, and a derating of the charging current with temperature.
 */
package curbwatt.engine.protection;
