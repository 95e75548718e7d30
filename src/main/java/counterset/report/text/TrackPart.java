package counterset.report.text;

import counterset.explain.FetchLine;
import counterset.explain.TrackWords;
import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Plan;
import counterset.model.TargetCoverage;
import counterset.model.Track;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/** What the run sheet tells of the tracks of a class; nothing where there are none. */
final class TrackPart {

  private TrackPart() {}

  /** For the head: each track with the number of its modifications. */
  static void head(Page page, Plan plan, Catalogue catalogue) {
    TrackWords words = new TrackWords(catalogue);
    List<String> names = plan.tracks().stream().map(track -> count(track, words)).toList();
    if (!names.isEmpty()) {
      page.plain("Tracks       ", String.join("; ", names));
    }
  }

  private static String count(Track track, TrackWords words) {
    int number = track.modifications().size();
    String count = number == 0 ? "nothing to modify" : English.count(number, "modification");
    return words.of(track) + " (" + count + ")";
  }

  /** For the list of what to fetch: what only some need. */
  static void fetch(Page page, Plan plan, Catalogue catalogue) {
    TrackWords words = new TrackWords(catalogue);
    for (Track track : plan.tracks()) {
      for (FetchLine line : FetchLine.more(plan, track)) {
        page.plain("  for " + words.of(track) + ": ", line.what() + "   " + line.where());
      }
    }
  }

  /** The targets that tracks have other sets of, in one table. */
  static void coverage(Page page, Plan plan, Catalogue catalogue) {
    List<Track> tracks =
        plan.tracks().stream()
            .filter(track -> !track.plan().coverage().equals(plan.coverage()))
            .toList();
    if (tracks.isEmpty()) {
      return;
    }
    TrackWords words = new TrackWords(catalogue);
    List<String> legend =
        IntStream.range(0, tracks.size())
            .mapToObj(i -> (char) ('a' + i) + " " + words.of(tracks.get(i)))
            .toList();
    page.blank();
    page.strong("COVERAGE ON TRACKS  ", "sets, where they differ: " + String.join(", ", legend));
    List<Integer> rows =
        IntStream.range(0, plan.coverage().size())
            .filter(i -> tracks.stream().anyMatch(track -> differs(track, plan, i)))
            .boxed()
            .toList();
    int width = rows.stream().mapToInt(i -> name(plan, i, catalogue).length()).max().orElse(1);
    List<String> heads = new ArrayList<>(List.of("all"));
    IntStream.range(0, tracks.size()).forEach(i -> heads.add(String.valueOf((char) ('a' + i))));
    page.plain("", row("", width, heads));
    for (int i : rows) {
      List<String> cells = new ArrayList<>(List.of(sets(plan.coverage().get(i))));
      String muscle = plan.coverage().get(i).muscle();
      tracks.forEach(track -> cells.add(own(track, muscle).map(TrackPart::sets).orElse("-")));
      page.plain("", row(name(plan, i, catalogue), width, cells));
    }
  }

  private static boolean differs(Track track, Plan plan, int target) {
    TargetCoverage all = plan.coverage().get(target);
    return !own(track, all.muscle()).equals(Optional.of(all));
  }

  /** A target as a track trains it; empty if nothing that suits the track can. */
  private static Optional<TargetCoverage> own(Track track, String muscle) {
    return track.plan().coverage().stream()
        .filter(target -> target.muscle().equals(muscle))
        .findFirst();
  }

  private static String row(String name, int width, List<String> cells) {
    StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "  %-" + width + "s", name));
    cells.forEach(cell -> row.append(String.format(Locale.ROOT, "  %7s", cell)));
    return row.toString();
  }

  private static String sets(TargetCoverage target) {
    boolean isShort = !target.isCovered();
    return String.format(Locale.ROOT, "%.1f", target.sets()) + (isShort ? "!" : "");
  }

  private static String name(Plan plan, int target, Catalogue catalogue) {
    return catalogue.muscles().get(plan.coverage().get(target).muscle()).name();
  }
}
