/**
 * The command line: what the user asked, what to do, and the exit code.
 *
 * <p>{@link curbwatt.charts.command.Main} dispatches; each {@code …Command} is one command. Only here are problems
 * turned into
 * exit codes ({@link curbwatt.charts.command.ExitCode}), and only {@code Main} ends the program.
 * {@code docs/command-line.md} is the manual; every command's {@code --help} says the same.
 */
package curbwatt.charts.command;
