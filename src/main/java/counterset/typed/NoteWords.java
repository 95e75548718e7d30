package counterset.typed;

import java.util.Set;

/** Words that say something about an exercise and are no part of its name. */
final class NoteWords {

  static final Set<String> SIDE = Set.of("side", "leg", "arm", "way", "limb");
  static final Set<String> SMALL =
      Set.of(
          "a", "an", "the", "at", "on", "with", "of", "in", "for", "to", "from", "your", "my",
          "using", "holding", "wearing", "keep", "again", "same");
  private static final Set<String> KNOWN =
      Set.of(
          "each",
          "side",
          "both",
          "left",
          "right",
          "then",
          "rep",
          "repetition",
          "amrap",
          "set",
          "round",
          "second",
          "rest",
          "work",
          "time",
          "into",
          "tempo",
          "slow",
          "circuit",
          "pair",
          "block",
          "finisher",
          "other",
          "heavy",
          "medium",
          "light",
          "chest",
          "main");

  private NoteWords() {}

  static boolean isKnown(String key) {
    return KNOWN.contains(key) || SMALL.contains(key);
  }
}
