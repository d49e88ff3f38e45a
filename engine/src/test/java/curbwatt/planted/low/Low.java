package curbwatt.planted.low;

import curbwatt.planted.high.High;

/** Looks up, which closes a cycle. */
@SuppressWarnings("ArrayRecordComponent")
public record Low(High high, double[] values) {}
