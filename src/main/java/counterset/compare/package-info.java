/**
 * Plans side by side: their figures, what each constraint makes of them, which is better for whom,
 * and which of two aims each trades for the other.
 *
 * <p>Nothing is planned here. May depend on {@code model} and, for words, on {@code score} and
 * {@code explain}.
 */
package counterset.compare;
