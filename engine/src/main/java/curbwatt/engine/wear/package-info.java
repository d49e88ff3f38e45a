/**
 * What cycling does to a battery: cycles counted from a record of its state of charge, charge put through, and an
 * estimate of life by published cycle counts.
 *
 * <p>Order of magnitude only: calendar ageing, heat, undercharging, overcharging and acid stratification, any of which
 * may
 * end a vehicle's battery first, are left out. Nothing here changes a battery in a run.
 */
package curbwatt.engine.wear;
