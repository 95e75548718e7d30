package counterset.ask;

import counterset.model.Pairing;
import counterset.model.Region;

/** The words that the language has besides the names of the catalogue. */
final class OwnWords {

  /** The id of all regions together. */
  static final String WHOLE = "whole";

  /** The id of filler words that change nothing, but ask for something. */
  static final String ASKED = "asked";

  private OwnWords() {}

  static void addTo(Vocabulary vocabulary) {
    add(
        vocabulary,
        Kind.REGION,
        Region.LOWER.id(),
        "lower body",
        "lower",
        "legs",
        "leg",
        "leg day");
    add(vocabulary, Kind.REGION, Region.UPPER.id(), "upper body", "upper");
    add(vocabulary, Kind.REGION, Region.CORE.id(), "core", "trunk");
    add(vocabulary, Kind.REGION, WHOLE, "whole body", "full body", "total body");
    add(vocabulary, Kind.LEVEL, "1", "beginner", "easy", "gentle");
    add(vocabulary, Kind.LEVEL, "2", "intermediate", "regular");
    add(vocabulary, Kind.LEVEL, "3", "advanced", "hard", "strong");
    add(
        vocabulary,
        Kind.PAIRING,
        Pairing.OPPOSING.id(),
        "opposing",
        "opposites",
        "opposing muscles",
        "opposing muscle groups",
        "opposing pairs",
        "opposing pairing",
        "agonist-antagonist",
        "agonist-antagonist supersets");
    add(
        vocabulary,
        Kind.PAIRING,
        Pairing.COMPOUND.id(),
        "compound sets",
        "compound",
        "compound pairing");
    add(vocabulary, Kind.PAIRING, Pairing.FREE.id(), "any pairing", "free pairing", "free");
    add(vocabulary, Kind.SHAPE, "1", "straight sets");
    add(vocabulary, Kind.SHAPE, "2", "supersets");
    add(vocabulary, Kind.SHAPE, "3", "tri-sets");
    for (ClockPart part : ClockPart.values()) {
      add(vocabulary, Kind.CLOCK_PART, part.name(), part.words().toArray(String[]::new));
    }
    add(
        vocabulary,
        Kind.NO_EQUIPMENT,
        "",
        "no equipment",
        "without equipment",
        "without any equipment",
        "bodyweight only",
        "body weight only",
        "only bodyweight",
        "only body weight",
        "nothing");
    add(
        vocabulary,
        Kind.NOT,
        "",
        "no",
        "without",
        "not",
        "except",
        "except for",
        "exclude",
        "excluding",
        "avoid",
        "avoiding",
        "skip",
        "leave out",
        "can't do",
        "cannot do");
    add(
        vocabulary,
        Kind.EMPHASIS,
        "",
        "more",
        "extra",
        "focus on",
        "focus",
        "emphasis on",
        "more emphasis on",
        "extra emphasis on",
        "more focus on",
        "especially",
        "more work for");
    add(vocabulary, Kind.INCLUDE, "", "include", "including", "must have", "must include");
    add(vocabulary, Kind.LIKES, "", "like", "love", "enjoy");
    add(
        vocabulary,
        Kind.DISLIKES,
        "",
        "dislike",
        "hate",
        "does not like",
        "do not like",
        "doesn't like",
        "don't like");
    add(
        vocabulary,
        Kind.FILLER,
        "",
        "a",
        "an",
        "the",
        "for",
        "please",
        "session",
        "workout",
        "of",
        "me",
        "my",
        "her",
        "his",
        "their",
        "i",
        "she",
        "he",
        "we",
        "they",
        "have",
        "has",
        "want",
        "need",
        "would like",
        "I'd like",
        "use",
        "using",
        "give",
        "only",
        "just",
        "client",
        "class",
        "exercise",
        "training",
        "train",
        "target",
        "muscle",
        "muscle group",
        "equipment",
        "limitation",
        "in",
        "on",
        "at",
        "to",
        "is",
        "it",
        "that",
        "who",
        "some",
        "home",
        "at home",
        "day",
        "long",
        "total",
        "in total",
        "body",
        "nothing else",
        "no other equipment",
        "interval",
        "at most",
        "max",
        "maximum");
    add(vocabulary, Kind.FILLER, ASKED, "body weight", "bodyweight", "express", "strength");
  }

  private static void add(Vocabulary vocabulary, Kind kind, String id, String... names) {
    for (String name : names) {
      vocabulary.add(new Term(kind, id, name));
    }
  }
}
