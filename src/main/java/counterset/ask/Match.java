package counterset.ask;

import java.util.List;

/** The longest name found at a place: all that it stands for, and the place after it. */
record Match(List<Term> terms, int end) {

  boolean has(Kind kind) {
    return terms.stream().anyMatch(term -> term.kind() == kind);
  }

  /** The ids of those terms that are of one of the kinds. */
  List<String> ids(Kind... kinds) {
    List<Kind> wanted = List.of(kinds);
    return terms.stream()
        .filter(term -> wanted.contains(term.kind()))
        .map(Term::id)
        .distinct()
        .toList();
  }

  /** The only or first id. */
  String id() {
    return terms.get(0).id();
  }
}
