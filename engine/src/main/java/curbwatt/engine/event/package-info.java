/**
 * What happened in a run, when, to what. Events are facts with a time; the words for them are made where they are
 * shown.
 */
package curbwatt.engine.event;
