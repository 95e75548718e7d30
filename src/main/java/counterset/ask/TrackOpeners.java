package counterset.ask;

/** The words that a class, or one person in it, begins with. Each method gives the place after. */
final class TrackOpeners {

  private static final String[] LINKS = {
    ":", "with", "where", "have", "ha", "having", "who", "whom", "of", "in", "which", "some", "for"
  };

  private TrackOpeners() {}

  /** After "class with", "class: some have" or "tracks"; the same place if there is none. */
  static int afterClass(Words words, int at) {
    boolean track = words.is(at, "track");
    boolean group = words.is(at, "class", "group", "follower", "people");
    boolean clients = words.is(at, "client") && words.at(at).isPlural();
    if (!track && !group && !clients) {
      return at;
    }
    int end = words.skip(at + 1, LINKS);
    boolean person = afterPerson(words, end) > end;
    return track || person || isLinked(words, end - 1) ? end : at;
  }

  /** After "someone with", "others with" or "two with"; the same place if there is none. */
  static int afterPerson(Words words, int at) {
    int start = words.is(at, "a", "another") && words.is(at + 1, "person") ? at + 1 : at;
    boolean one =
        words.is(start, "someone", "somebody", "anyone", "anybody", "person", "some", "other")
            || words.is(start, "those", "another");
    int who = one ? start + 1 : Numeral.read(words, start).map(Numeral::end).orElse(start);
    if (who == start) {
      return at;
    }
    int end = words.skip(who, "who", "people", "follower", "client", "of", "them");
    return words.is(end, "with", "have", "ha", "having") ? end + 1 : at;
  }

  /** After "for someone with", which tells of a private client; the same place if there is none. */
  static int afterOneClient(Words words, int at) {
    boolean one = words.is(at + 1, "someone", "somebody", "person");
    return words.is(at, "for") && one ? words.skip(at + 2, "with", "who", "ha", "both") : at;
  }

  private static boolean isLinked(Words words, int last) {
    return words.is(last, LINKS);
  }
}
