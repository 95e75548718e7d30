/**
 * Plans as plain text: the run sheet that a coach leads from, and a plan on one line.
 *
 * <p>No line is longer than 100 columns, and nothing depends on colour. May depend on {@code
 * report}, {@code explain}, {@code score}, {@code timeline} and {@code model}.
 */
package counterset.report.text;
