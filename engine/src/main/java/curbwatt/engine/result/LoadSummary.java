package curbwatt.engine.result;

import java.util.OptionalDouble;

/**
 * A load's drop-outs.
 *
 * @param load its name
 * @param circuit name of its circuit
 * @param firstDropOutS when it first dropped out (s); empty: never
 * @param dropOuts how often it dropped out
 * @param droppedOutS time in which it was wanted but had dropped out (s)
 */
public record LoadSummary(
        String load, String circuit, OptionalDouble firstDropOutS, int dropOuts, double droppedOutS) {}
