/** What a way of standing costs over a year, and where two ways cost the same: arithmetic alone, in any currency. */
package curbwatt.engine.study.idle.money;
