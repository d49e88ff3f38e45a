/** The load budget on paper: what each load draws on average and at most in a phase, before anything is simulated. */
package curbwatt.engine.budget;
