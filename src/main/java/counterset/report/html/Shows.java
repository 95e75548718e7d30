package counterset.report.html;

import counterset.explain.ItemWords;
import counterset.explain.Items;
import counterset.explain.Modifications;
import counterset.explain.TrackWords;
import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.Plan;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The modifications beside an exercise: for whom, what, and how it is done the first time. */
final class Shows {

  private final Catalogue catalogue;
  private final Modifications modifications;
  private final TrackWords tracks;
  private final ItemWords items;
  private final Set<String> explained = new HashSet<>();

  Shows(Plan plan, Catalogue catalogue) {
    this.catalogue = catalogue;
    this.modifications = new Modifications(plan);
    this.tracks = new TrackWords(catalogue);
    this.items = new ItemWords(plan.problem());
  }

  /** One line for those who do the same. */
  List<Line> of(Interval work) {
    Map<Exercise, List<Modifications.Shown>> groups = new LinkedHashMap<>();
    for (Modifications.Shown shown : modifications.of(work)) {
      groups.computeIfAbsent(shown.exercise(), exercise -> new ArrayList<>()).add(shown);
    }
    List<Line> lines = new ArrayList<>();
    for (List<Modifications.Shown> group : groups.values()) {
      String who =
          group.stream().map(one -> tracks.of(one.track())).collect(Collectors.joining(" or "));
      lines.add(new Line(English.capital(who), what(group.get(0))));
    }
    return lines;
  }

  private String what(Modifications.Shown shown) {
    Exercise exercise = shown.exercise();
    String side = Names.side(shown.side());
    String name = exercise.name() + (side.isEmpty() ? "" : ", " + side);
    if (!explained.add(exercise.id())) {
      return name + ", as before.";
    }
    List<String> needs = Items.of(exercise, catalogue).stream().map(items::said).toList();
    String with = needs.isEmpty() ? "" : " with " + English.list(needs);
    String cue = exercise.cues().stream().findFirst().map(words -> " " + words).orElse("");
    return name + with + ". " + exercise.setup() + cue;
  }
}
