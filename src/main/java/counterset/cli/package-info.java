/**
 * The commands: options and exit codes. Results go to standard output, messages and progress to
 * standard error. What a command does is in {@code intake} (what is asked for), {@code search},
 * {@code review}, {@code compare}, {@code batch}, {@code training} and {@code report.file}.
 *
 * <p>Only {@link counterset.cli.Main} ends the process. Nothing imports this package; it alone
 * knows picocli.
 */
package counterset.cli;
