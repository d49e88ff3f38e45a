/** Benchmarks and what writes their page; not shipped. {@code .ci/measure-performance} runs all of it. */
package curbwatt.engine.bench;
