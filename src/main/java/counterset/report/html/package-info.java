/**
 * Plans as pages for a browser: one file each that loads nothing and is opened from disk.
 *
 * <p>Templates, styles and scripts are resources of this package; {@link
 * counterset.report.html.Template} escapes whatever is put into a template. May depend on {@code
 * report}, {@code explain}, {@code timeline} and {@code model}, and on {@code json} for the data of
 * the clock.
 */
package counterset.report.html;
