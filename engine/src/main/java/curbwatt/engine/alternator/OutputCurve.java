package curbwatt.engine.alternator;

/** Largest current an alternator can deliver, cold, at a shaft speed. */
public sealed interface OutputCurve permits ReactanceOutputCurve, MeasuredOutputCurve {

    /** Largest current at a shaft speed (A); 0 where the machine does not deliver. */
    double maximumA(double shaftRpm);

    /** Shaft speed below which nothing is delivered (1/min). */
    double cutInRpm();

    /** Lowest shaft speed at which the curve is to be trusted (1/min). */
    double trustedFromRpm();
}
