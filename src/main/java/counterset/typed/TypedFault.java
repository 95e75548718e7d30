package counterset.typed;

/**
 * What is wrong with a place of the text.
 *
 * @param line from 1; 0 for the text as a whole
 * @param column from 1
 * @param message what is wrong, and the remedy
 */
public record TypedFault(int line, int column, String message) {}
