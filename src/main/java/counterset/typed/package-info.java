/**
 * A session as a coach types it, line by line, read into a {@link counterset.model.Session} and the
 * {@link counterset.model.Problem} that it is judged by.
 *
 * <p>{@code SourceText} cleans the text, {@code SegmentReader} takes from a line what is said of
 * the clock, sides, masses and repetitions, {@code NameMatcher} finds the exercises, {@code Layout}
 * makes supersets of them, {@code ProblemMaker} fills in what the text leaves open and says so.
 * Every line is told of: what it was taken for, or what is wrong with it; nothing is passed over.
 * Depends on {@code model}, {@code timeline} and the words of {@code ask}. Lines and columns count
 * from 1, columns in characters of the text as it was typed.
 */
package counterset.typed;
