/**
 * A session as notes in Markdown (CommonMark 0.31 with the pipe tables of GitHub Flavored Markdown
 * 0.29). May depend on {@code counterset.model}, {@code counterset.timeline}, {@code
 * counterset.explain} and {@code counterset.report}.
 */
package counterset.report.md;
