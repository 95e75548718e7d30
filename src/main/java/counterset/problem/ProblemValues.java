package counterset.problem;

import counterset.json.Cursor;
import counterset.model.At;
import counterset.model.Done;
import counterset.model.Intervals;
import counterset.model.Keep;
import counterset.model.Load;
import counterset.model.Owned;
import counterset.model.Pairing;
import counterset.model.Problem;
import counterset.model.Target;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The values of a problem without faults, defaults filled in. */
final class ProblemValues {

  static final String DEFAULT_TITLE = "Session";
  static final Pairing DEFAULT_PAIRING = Pairing.OPPOSING;
  static final long DEFAULT_SEED = 1;

  private ProblemValues() {}

  static Problem read(Cursor at, List<Target> targets) {
    return Problem.builder()
        .title(at.field("title").text().orElse(DEFAULT_TITLE))
        .minutes(at.field("minutes").integer().orElse(Problem.DEFAULT_MINUTES))
        .clock(clock(at.field("clock")))
        .targets(targets)
        .equipment(at.field("equipment").elements().stream().map(ProblemValues::owned).toList())
        .limitations(set(at.field("limitations")))
        .tracks(at.field("tracks").elements().stream().map(ProblemValues::track).toList())
        .level(at.field("level").integer().orElse(Problem.DEFAULT_LEVEL))
        .pairing(at.field("pairing").constant(Pairing.class).orElse(DEFAULT_PAIRING))
        .include(set(at.field("include")))
        .exclude(set(at.field("exclude")))
        .keep(at.field("keep").elements().stream().map(ProblemValues::keep).toList())
        .likes(set(at.field("likes")))
        .dislikes(set(at.field("dislikes")))
        .recent(at.field("recent").elements().stream().map(ProblemValues::done).toList())
        .date(at.field("date").text().map(LocalDate::parse))
        .weights(weights(at.field("weights")))
        .seed(at.field("seed").whole().orElse(DEFAULT_SEED))
        .build();
  }

  private static Intervals clock(Cursor at) {
    Intervals express = Intervals.EXPRESS;
    return new Intervals(
        at.field("getReady").integer().orElse(express.getReady()),
        at.field("warmUp").integer().orElse(express.warmUp()),
        at.field("work").integer().orElse(express.work()),
        at.field("switch").integer().orElse(express.between()),
        at.field("rest").integer().orElse(express.rest()),
        at.field("coolDown").integer().orElse(express.coolDown()),
        at.field("perSuperset").integer().orElse(express.perSuperset()),
        at.field("rounds").integer().orElse(express.rounds()));
  }

  private static Owned owned(Cursor at) {
    Set<Load> loads = EnumSet.noneOf(Load.class);
    at.field("loads").elements().forEach(load -> load.constant(Load.class).ifPresent(loads::add));
    return new Owned(
        at.field("id").text().orElseThrow(),
        at.field("count").integer().orElse(1),
        at.field("kg").elements().stream().map(kg -> kg.number().orElseThrow()).toList(),
        at.field("loads").isPresent() ? loads : EnumSet.allOf(Load.class));
  }

  private static Set<String> track(Cursor at) {
    return at.isText() ? Set.of(at.text().orElseThrow()) : set(at);
  }

  private static Keep keep(Cursor at) {
    return new Keep(
        at.field("at").text().flatMap(At::parse).orElseThrow(),
        at.field("exercise").text().orElseThrow());
  }

  private static Done done(Cursor at) {
    return new Done(
        LocalDate.parse(at.field("date").text().orElseThrow()), at.field("exercises").texts());
  }

  private static Map<String, Integer> weights(Cursor at) {
    Map<String, Integer> weights = new LinkedHashMap<>();
    at.entries().forEach((id, weight) -> weights.put(id, weight.integer().orElseThrow()));
    return weights;
  }

  private static Set<String> set(Cursor at) {
    return new LinkedHashSet<>(at.texts());
  }
}
