package curbwatt.engine.result;

/**
 * The answer to "would it start now?".
 *
 * @param timeS when it was asked, since the scene's start (s)
 * @param phase name of the phase in which, or at whose end, it was asked
 * @param batteryC battery temperature (°C)
 * @param lowestV lowest battery voltage while cranking, with the loads as the vehicle says (V); negative infinity: the
 *     battery cannot deliver the current at all
 * @param lowestLoadsOffV the same with all equipment off (V)
 * @param minimumV what is asked (V)
 */
public record CrankCheck(
        double timeS, String phase, double batteryC, double lowestV, double lowestLoadsOffV, double minimumV) {

    /** Room above the required voltage (V); negative: it would not start. */
    public double marginV() {
        return lowestV - minimumV;
    }
}
