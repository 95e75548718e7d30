/**
 * WebVTT (W3C Candidate Recommendation of 4 April 2019): what the coach says as captions, and the
 * parts of the session as chapters, for a recording. May depend on {@code counterset.model}, {@code
 * counterset.timeline}, {@code counterset.explain} and {@code counterset.report}.
 */
package counterset.report.vtt;
