package counterset.report.text;

import counterset.explain.ItemWords;
import counterset.explain.Items;
import counterset.explain.ModificationWords;
import counterset.explain.Modifications;
import counterset.explain.TrackWords;
import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.Plan;
import counterset.model.Side;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The modifications beside an exercise: for whom, how it is done, and what is said. */
final class ShowPart {

  private final Page page;
  private final Catalogue catalogue;
  private final Modifications modifications;
  private final ModificationWords said;
  private final TrackWords tracks;
  private final ItemWords items;
  private final Set<String> explained = new HashSet<>();

  ShowPart(Page page, Plan plan, Catalogue catalogue) {
    this.page = page;
    this.catalogue = catalogue;
    this.modifications = new Modifications(plan);
    this.said = new ModificationWords(plan, catalogue);
    this.tracks = new TrackWords(catalogue);
    this.items = new ItemWords(plan.problem());
  }

  void write(Interval work, String margin) {
    Map<Exercise, List<Modifications.Shown>> groups = new LinkedHashMap<>();
    for (Modifications.Shown shown : modifications.of(work)) {
      groups.computeIfAbsent(shown.exercise(), exercise -> new ArrayList<>()).add(shown);
    }
    for (List<Modifications.Shown> group : groups.values()) {
      String who =
          group.stream().map(one -> tracks.of(one.track())).collect(Collectors.joining(" or "));
      page.plain(margin + "Show   ", English.capital(who) + ": " + what(group.get(0)));
    }
    List<String> sentences = said.during(work);
    if (!sentences.isEmpty()) {
      page.plain(margin + "Say    ", String.join(" ", sentences));
    }
  }

  private String what(Modifications.Shown shown) {
    Exercise exercise = shown.exercise();
    String side =
        switch (shown.side().orElse(Side.BOTH)) {
          case BOTH -> "";
          case LEFT -> ", left side";
          case RIGHT -> ", right side";
          case ALTERNATING -> ", sides in turn";
        };
    if (!explained.add(exercise.id())) {
      return exercise.name() + side + ", as before.";
    }
    List<String> needs =
        new ArrayList<>(Items.of(exercise, catalogue).stream().map(items::said).toList());
    String with = needs.isEmpty() ? "" : " with " + English.list(needs);
    Optional<String> cue = exercise.cues().stream().findFirst();
    return exercise.name()
        + side
        + with
        + ". "
        + exercise.setup()
        + cue.map(words -> " " + words).orElse("");
  }
}
