package counterset.ask;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads one group of followers within a list of them: the limitations that each of it has. */
final class TrackItems {

  /**
   * What was read.
   *
   * @param groups mostly one; several where one word serves them ("sore knees and wrists")
   */
  record Item(List<Set<String>> groups, List<AskFault> faults, int end) {}

  private final LimitationReader limitations;
  private final NegationReader negations;

  TrackItems(LimitationReader limitations, NegationReader negations) {
    this.limitations = limitations;
    this.negations = negations;
  }

  Optional<Item> read(Words words, int at) {
    int person = TrackOpeners.afterPerson(words, at);
    int both = words.skip(words.skipSmall(person), "both");
    boolean one = person > at || both > words.skipSmall(person);
    Item item = limitation(words, both).orElse(null);
    if (item == null) {
      return Optional.empty();
    }
    boolean apart = item.groups().size() > 1;
    Set<String> joined = new LinkedHashSet<>();
    item.groups().forEach(joined::addAll);
    List<AskFault> faults = new ArrayList<>(item.faults());
    int end = item.end();
    boolean more = true;
    while (more) {
      int next = words.is(end, "plus") || one && words.is(end, "and") ? end + 1 : end;
      int with = words.skip(next, "with");
      Item other = next > end ? limitation(words, words.skipSmall(with)).orElse(null) : null;
      more = other != null;
      if (more) {
        apart = false;
        other.groups().forEach(joined::addAll);
        faults.addAll(other.faults());
        end = other.end();
      }
    }
    return Optional.of(
        new Item(apart && !one ? item.groups() : groups(joined), List.copyOf(faults), end));
  }

  private static List<Set<String>> groups(Set<String> ids) {
    return ids.isEmpty() ? List.of() : List.of(ids);
  }

  /** A limitation, unless a longer phrase of another kind ("no jumping jacks") begins there. */
  private Optional<Item> limitation(Words words, int at) {
    Phrase phrase = limitations.read(words, at).orElse(null);
    Phrase negation = negations.read(words, at).orElse(null);
    if (phrase == null || negation != null && negation.end() > phrase.end()) {
      return Optional.empty();
    }
    AskDraft scratch = new AskDraft();
    phrase.effect().ifPresent(effect -> effect.accept(scratch));
    boolean plus = words.keys(at, phrase.end()).contains("plus");
    List<Set<String>> groups =
        plus
            ? groups(new LinkedHashSet<>(scratch.limitations.keySet()))
            : scratch.limitations.keySet().stream().map(Set::of).toList();
    return Optional.of(new Item(groups, scratch.faults(), phrase.end()));
  }
}
