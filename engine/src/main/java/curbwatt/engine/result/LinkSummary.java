package curbwatt.engine.result;

/**
 * What the link between the batteries lived through.
 *
 * @param link its name
 * @param closedS time in which it was closed or charging (s)
 * @param toEquipmentAh charge that reached the equipment node (Ah)
 * @param toStarterAh charge that went back to the starter node (Ah)
 * @param peakA largest current, either way (A)
 */
public record LinkSummary(String link, double closedS, double toEquipmentAh, double toStarterAh, double peakA) {}
