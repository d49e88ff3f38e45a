/** What a run hands back; immutable, and complete enough that nothing has to be computed again to show it. */
package curbwatt.engine.result;
