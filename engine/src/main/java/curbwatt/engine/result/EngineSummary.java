package curbwatt.engine.result;

import java.util.OptionalDouble;

/**
 * What the engine did.
 *
 * @param runS time in which it ran (s)
 * @param highIdleS time at raised idle (s)
 * @param starts how often it was started, by the scene and by devices
 * @param raises how often its idle was raised
 * @param fuelLitres fuel taken (L); empty: its fuel is not known
 */
public record EngineSummary(double runS, double highIdleS, int starts, int raises, OptionalDouble fuelLitres) {}
