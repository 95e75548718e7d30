/**
 * The commands: options become one record, results go to standard output, messages and progress to
 * standard error.
 *
 * <p>Only {@link counterset.cli.Main} ends the process. Nothing imports this package; it alone
 * knows picocli.
 */
package counterset.cli;
