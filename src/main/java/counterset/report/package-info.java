/**
 * Whatever several formats share; each format is a package below that never imports another.
 *
 * <p>Depends on {@code model}.
 */
package counterset.report;
