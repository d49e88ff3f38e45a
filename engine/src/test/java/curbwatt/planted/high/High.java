package curbwatt.planted.high;

import curbwatt.planted.low.Low;
import java.util.List;

/** Looks down. */
@SuppressWarnings("ArrayRecordComponent")
public record High(List<Low> lows, Low[] more, int[][] numbers) {}
