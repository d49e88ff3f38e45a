/**
 * Sentences from results: what a planner reads first.
 *
 * <p>{@link curbwatt.charts.wording.Headline} is the answer in one sentence, {@link
 * curbwatt.charts.wording.FindingText} says
 * what each requirement asked and what came of it, {@link curbwatt.charts.wording.EventText},
 * {@link curbwatt.charts.wording.DoubtText} and {@link curbwatt.charts.wording.LedgerText} do the same for events,
 * doubts and
 * ledgers, {@link curbwatt.charts.wording.ChartTitle} names each chart after its finding,
 * {@link curbwatt.charts.wording.Cautions} says what no figure can. {@link curbwatt.charts.wording.PlainText} spells
 * numbers.
 *
 * <p>Plain English only. Computes nothing and decides nothing: verdicts come from the engine.
 */
package curbwatt.charts.wording;
