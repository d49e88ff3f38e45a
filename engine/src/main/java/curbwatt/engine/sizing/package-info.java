/**
 * Battery sizes by the paper methods of stationary practice: a duty cycle section by section with capacity-rating
 * factors (IEEE 485, and IEEE 1115 in the same way), and days of autonomy with depths of discharge (IEEE 1013). Factors
 * come from a published table or from a battery of our own. Knows nothing of vehicles and scenes.
 */
package curbwatt.engine.sizing;
