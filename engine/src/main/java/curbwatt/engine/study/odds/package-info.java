/**
 * Chances: a scene run many times, each time with other figures drawn for what nobody knows exactly.
 *
 * <p>{@link curbwatt.engine.study.odds.OddsPlan} says how uncertain each {@link curbwatt.engine.study.odds.Input} is,
 * {@link curbwatt.engine.study.odds.UnitPoints} draws, {@link curbwatt.engine.study.odds.Trial} runs one draw, {@link
 * curbwatt.engine.study.odds.OddsStudy} runs them all and counts.
 */
package curbwatt.engine.study.odds;
