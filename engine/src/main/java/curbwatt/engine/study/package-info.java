/**
 * Many runs: a family of questions, asked in parallel, whose answers do not depend on the number of threads.
 *
 * <p>{@link curbwatt.engine.study.Question} is one run and what is asked of it, {@link
 * curbwatt.engine.study.Variation} makes another question of it, {@link curbwatt.engine.study.RunPool} asks them all.
 * A study is one class in a room of its own beside this one that chooses the questions and reads the answers; it knows
 * nothing of files, screens or charts.
 */
package curbwatt.engine.study;
