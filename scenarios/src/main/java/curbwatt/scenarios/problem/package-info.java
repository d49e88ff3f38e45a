/** What is wrong with an input, where, and what would be right. Makes no output; the command prints. */
package curbwatt.scenarios.problem;
