package counterset.ask;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the groups of a class that have limitations of their own: "class with sore knees and no
 * jumping" is two of them.
 *
 * <p>A class (also group, track, followers, people, clients) opens a list of limitations with
 * "with", "where", "have" or a colon. Commas, semicolons and "and" go on to the next group; "plus",
 * "both" and "together" tell of one person. "Someone with", "some with", "others with" and "two
 * with" open a person or a group that has all that follows up to a comma. Whatever is no limitation
 * ends the list, and a limitation outside of it binds the whole session.
 */
final class TracksReader implements PhraseReader {

  private static final String UNCLEAR =
      "It is not clear who has which. Join what one person has with \"plus\", such as"
          + " \"class: sore knees, no floor plus unsteady balance\".";

  private final TrackItems items;

  TracksReader(LimitationReader limitations, NegationReader negations) {
    this.items = new TrackItems(limitations, negations);
  }

  @Override
  public Optional<Phrase> read(Words words, int at) {
    int client = TrackOpeners.afterOneClient(words, at);
    if (client > at) {
      return Phrase.filler(client);
    }
    int open = TrackOpeners.afterClass(words, at);
    if (open == at) {
      return TrackOpeners.afterPerson(words, at) > at ? list(words, at, at) : Optional.empty();
    }
    return list(words, at, open);
  }

  private Optional<Phrase> list(Words words, int at, int first) {
    List<AskDraft.TrackNamed> tracks = new ArrayList<>();
    List<AskFault> faults = new ArrayList<>();
    int end = at;
    int next = first;
    boolean comma = false;
    while (next >= 0) {
      TrackItems.Item item = items.read(words, next).orElse(null);
      if (item == null) {
        break;
      }
      Span span = words.span(next, item.end());
      faults.addAll(item.faults());
      item.groups().forEach(ids -> tracks.add(new AskDraft.TrackNamed(ids, span)));
      end = item.end();
      if (words.is(end, "together")) {
        end++;
        together(tracks, comma, words.span(first, end), faults);
      }
      comma |= words.isBreak(end);
      next = goesOn(words, end);
    }
    return tracks.isEmpty() && faults.isEmpty() ? Optional.empty() : phrase(end, tracks, faults);
  }

  private static Optional<Phrase> phrase(
      int end, List<AskDraft.TrackNamed> tracks, List<AskFault> faults) {
    return Phrase.of(
        end,
        draft -> {
          draft.tracks.addAll(tracks);
          faults.forEach(it -> draft.fault(new Span(it.phrase(), it.column()), it.message()));
        });
  }

  /** "Together" makes one of two groups that "and" joins; it only confirms "plus". */
  private static void together(
      List<AskDraft.TrackNamed> tracks, boolean comma, Span whole, List<AskFault> faults) {
    int last = tracks.size() - 1;
    if (last < 0 || tracks.get(last).ids().size() > 1) {
      return;
    }
    if (last != 1 || comma) {
      faults.add(new AskFault(whole.text(), whole.column(), UNCLEAR));
      return;
    }
    Set<String> both = new LinkedHashSet<>(tracks.get(0).ids());
    both.addAll(tracks.get(1).ids());
    tracks.clear();
    tracks.add(new AskDraft.TrackNamed(both, whole));
  }

  /** Where a list goes on after one of its groups, or -1. */
  private static int goesOn(Words words, int end) {
    int at = words.is(end, ",", ";") ? end + 1 : end;
    int after = words.is(at, "and", "or", "/") ? at + 1 : at;
    return after == end ? -1 : after;
  }
}
