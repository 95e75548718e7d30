/**
 * The clock of a session as comma-separated values (RFC 4180): one row an interval. May depend on
 * {@code counterset.model}, {@code counterset.timeline}, {@code counterset.explain} and {@code
 * counterset.report}.
 */
package counterset.report.csv;
