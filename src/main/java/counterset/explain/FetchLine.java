package counterset.explain;

import counterset.model.English;
import counterset.model.Fetch;
import counterset.model.Item;
import counterset.model.Plan;
import counterset.model.Track;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Something to fetch, as a coach writes it on a list: pieces of the same mass once, as many as are
 * used at a time.
 *
 * @param what {@code two dumbbells (heavy, 10 kg)}
 * @param where {@code supersets 1-3 and 6}
 * @param note where it is before the start; empty if there is nothing to say
 */
public record FetchLine(String what, String where, String note) {

  /** The list of a plan, in the order of first use. */
  public static List<FetchLine> of(Plan plan) {
    return lines(plan.fetch(), plan);
  }

  /** What the followers of a track fetch besides what all do. */
  public static List<FetchLine> more(Plan plan, Track track) {
    ItemWords words = new ItemWords(plan.problem());
    return lines(
        track.plan().fetch().stream()
            .filter(own -> plan.fetch().stream().noneMatch(other -> covers(other, own, words)))
            .toList(),
        plan);
  }

  private static boolean covers(Fetch fetch, Fetch other, ItemWords words) {
    return words.areSamePieces(fetch.item(), other.item())
        && fetch.item().count() >= other.item().count();
  }

  private static List<FetchLine> lines(List<Fetch> list, Plan plan) {
    ItemWords words = new ItemWords(plan.problem());
    List<List<Fetch>> groups = new ArrayList<>();
    for (Fetch fetch : list) {
      groups.stream()
          .filter(group -> words.areSamePieces(group.get(0).item(), fetch.item()))
          .findFirst()
          .orElseGet(
              () -> {
                groups.add(new ArrayList<>());
                return groups.get(groups.size() - 1);
              })
          .add(fetch);
    }
    return groups.stream().map(group -> line(group, words)).toList();
  }

  private static FetchLine line(List<Fetch> group, ItemWords words) {
    Item most =
        group.stream().map(Fetch::item).max(Comparator.comparingInt(Item::count)).orElseThrow();
    int[] supersets =
        group.stream()
            .flatMap(fetch -> fetch.supersets().stream())
            .mapToInt(Integer::intValue)
            .sorted()
            .distinct()
            .toArray();
    boolean atStart = group.stream().anyMatch(Fetch::atStart);
    return new FetchLine(words.written(most), where(supersets), note(most, atStart, supersets[0]));
  }

  private static String note(Item item, boolean atStart, int first) {
    if (!item.equipment().comfortIn().isEmpty()) {
      return "laid out before the start";
    }
    return switch (item.equipment().kind()) {
      case FIXED -> "keep the place at it free";
      case HELD -> "within reach";
      case PLACED -> atStart ? "in place before the start" : "at the side until superset " + first;
      case WORN ->
          atStart ? "on before the start" : "within reach, strapped on before superset " + first;
    };
  }

  private static String where(int[] supersets) {
    List<String> runs = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= supersets.length; i++) {
      if (i == supersets.length || supersets[i] != supersets[i - 1] + 1) {
        runs.add(supersets[from] + (i - from > 1 ? "-" + supersets[i - 1] : ""));
        from = i;
      }
    }
    return (supersets.length == 1 ? "superset " : "supersets ") + English.list(runs);
  }
}
