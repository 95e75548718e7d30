package counterset.ask;

/**
 * What is wrong with one phrase of an ask.
 *
 * @param phrase as written, control characters escaped
 * @param column where the phrase begins, counting characters from 1
 * @param message what is wrong, and the remedy
 */
public record AskFault(String phrase, int column, String message) {}
