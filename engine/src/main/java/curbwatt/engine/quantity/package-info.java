/**
 * Ranges of physical figures, and the one sentence that refuses a value outside them.
 *
 * <p>Holds {@link curbwatt.engine.quantity.Require}. Does not convert units: figures carry their unit in their name.
 */
package curbwatt.engine.quantity;
