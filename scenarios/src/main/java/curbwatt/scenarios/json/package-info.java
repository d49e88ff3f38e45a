/**
 * From bytes to {@link curbwatt.scenarios.file.ScenarioFile}; the only package that knows Jackson and the schema
 * validator.
 *
 * <p>{@link curbwatt.scenarios.json.SourceText} gets the text, {@link curbwatt.scenarios.json.ScenarioReader} reads it.
 * A text that is no JSON is refused with one sentence ({@link curbwatt.scenarios.json.SyntaxCheck}). One that is gets
 * all problems at once: keys that stand twice, and whatever the schema refuses ({@link
 * curbwatt.scenarios.json.SchemaCheck}). What is wrong is then taken out, so that rules over the rest can still be
 * held.
 *
 * <p>Does not know what the figures mean, nor the catalogue.
 */
package curbwatt.scenarios.json;
