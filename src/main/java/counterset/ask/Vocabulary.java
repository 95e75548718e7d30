package counterset.ask;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * All known names, as a tree of word keys. Two words of a name may also be written as one, and one
 * as two.
 */
final class Vocabulary {

  private static final class Node {
    private final Map<String, Node> next = new HashMap<>(4);
    private final List<Term> terms = new ArrayList<>(1);
  }

  private final Node root = new Node();
  private final List<Term> all = new ArrayList<>();

  private Vocabulary() {}

  static Vocabulary of(Catalogue catalogue) {
    Vocabulary vocabulary = new Vocabulary();
    catalogue
        .muscles()
        .values()
        .forEach(it -> vocabulary.add(Kind.MUSCLE, it.id(), it.name(), it.names()));
    catalogue
        .equipment()
        .values()
        .forEach(it -> vocabulary.add(Kind.EQUIPMENT, it.id(), it.name(), it.names()));
    catalogue
        .limitations()
        .values()
        .forEach(it -> vocabulary.add(Kind.LIMITATION, it.id(), it.name(), it.names()));
    Set<String> families = new LinkedHashSet<>();
    Set<String> patterns = new LinkedHashSet<>();
    for (Exercise exercise : catalogue.exercises().values()) {
      vocabulary.add(Kind.EXERCISE, exercise.id(), exercise.name(), exercise.names());
      families.add(exercise.family());
      patterns.add(exercise.pattern());
    }
    families.forEach(id -> vocabulary.add(new Term(Kind.FAMILY, id, id)));
    patterns.forEach(id -> vocabulary.add(new Term(Kind.PATTERN, id, id)));
    OwnWords.addTo(vocabulary);
    return vocabulary;
  }

  private void add(Kind kind, String id, String name, List<String> names) {
    add(new Term(kind, id, name));
    if (!id.equals(name.toLowerCase(Locale.ROOT).replace(' ', '-'))) {
      add(new Term(kind, id, id));
    }
    names.forEach(other -> add(new Term(kind, id, other)));
  }

  void add(Term term) {
    List<String> keys = Keys.ofName(term.name());
    if (keys.isEmpty()) {
      return;
    }
    Node[] path = new Node[keys.size() + 1];
    path[0] = root;
    for (int i = 0; i < keys.size(); i++) {
      path[i + 1] = path[i].next.computeIfAbsent(keys.get(i), key -> new Node());
    }
    for (int i = 0; i + 1 < keys.size(); i++) {
      path[i].next.putIfAbsent(keys.get(i) + keys.get(i + 1), path[i + 2]);
    }
    List<Term> known = path[keys.size()].terms;
    for (Term other : known) {
      if (other.kind() == term.kind() && other.id().equals(term.id())) {
        return;
      }
    }
    known.add(term);
    all.add(term);
  }

  /** All names, for suggestions. */
  List<Term> terms() {
    return all;
  }

  /** The longest name at a place that stands for one of the kinds. */
  Optional<Match> match(Words words, int at, Kind... kinds) {
    return Optional.ofNullable(match(root, words, at, List.of(kinds)));
  }

  private static Match match(Node node, Words words, int at, List<Kind> kinds) {
    Match best = null;
    Token token = words.at(at);
    if (token.isWord() || token.isNumber()) {
      best = follow(node.next.get(token.key()), words, at + 1, kinds);
      if (token.isWord() && words.at(at + 1).isWord()) {
        String joined = token.key() + words.at(at + 1).key();
        Match other = follow(node.next.get(joined), words, at + 2, kinds);
        best = best == null || other != null && other.end() > best.end() ? other : best;
      }
    }
    if (best == null) {
      List<Term> terms = node.terms.stream().filter(term -> kinds.contains(term.kind())).toList();
      return terms.isEmpty() ? null : new Match(terms, at);
    }
    return best;
  }

  private static Match follow(Node next, Words words, int at, List<Kind> kinds) {
    return next == null ? null : match(next, words, at, kinds);
  }

  /** The ids of one kind that exactly these keys name. */
  List<String> find(Kind kind, List<String> keys) {
    Node node = root;
    for (String key : keys) {
      node = node.next.get(key);
      if (node == null) {
        return List.of();
      }
    }
    return new Match(node.terms, 0).ids(kind);
  }
}
