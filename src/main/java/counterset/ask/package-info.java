/**
 * The line in which a coach asks for a session: read into a {@link counterset.model.Problem}, or
 * refused with every fault of it at once.
 *
 * <p>{@code Tokenizer} cuts the ask into tokens, {@code Vocabulary} knows the names of the
 * catalogue and the words of the language, each {@code PhraseReader} knows one idea, the longest
 * phrase wins, {@code AskDraft} gathers, {@code Contradictions} and {@code Assembly} finish.
 * Nothing is ignored but filler words, nothing is corrected silently. A slip that could put load on
 * a sore joint is a fault rather than a guess. {@code WeekParts} cuts the ask for a week by days,
 * each of which is then read as one session is. Depends on {@code model} only. Times are whole
 * seconds, masses are kilograms, columns count characters from 1.
 */
package counterset.ask;
