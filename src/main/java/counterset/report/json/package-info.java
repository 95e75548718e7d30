/**
 * Plans as JSON, in the order and with the names of the contract; the schema {@code plan} describes
 * it.
 *
 * <p>The same plan gives the same bytes. May depend on {@code explain}, {@code score}, {@code
 * timeline}, {@code model}, {@code counterset.json}, {@code counterset.problem} (its writer) and
 * Jackson.
 */
package counterset.report.json;
