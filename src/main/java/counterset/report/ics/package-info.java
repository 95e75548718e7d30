/**
 * Calendar entries (iCalendar, RFC 5545), one a session. May depend on {@code counterset.model},
 * {@code counterset.timeline}, {@code counterset.explain} and {@code counterset.report}.
 */
package counterset.report.ics;
