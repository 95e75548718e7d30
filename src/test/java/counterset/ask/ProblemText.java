package counterset.ask;

import counterset.model.Intervals;
import counterset.model.Load;
import counterset.model.Muscle;
import counterset.model.Owned;
import counterset.model.Pairing;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.model.Target;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** A problem in one line: only what differs from what silence means. */
final class ProblemText {

  private ProblemText() {}

  static String of(Problem problem) {
    List<String> parts = new ArrayList<>();
    add(parts, "min " + problem.minutes(), problem.minutes() != 20);
    String targets = targets(problem.targets());
    add(parts, "targets " + targets, !targets.equals("whole"));
    add(
        parts,
        "equipment " + join(problem.equipment().stream().map(ProblemText::owned).toList()),
        !problem.equipment().isEmpty());
    list(parts, "limits", problem.limitations());
    list(parts, "tracks", problem.tracks().stream().map(track -> String.join("+", track)).toList());
    add(parts, "level " + problem.level(), problem.level() != 2);
    clock(parts, problem);
    add(parts, "pairing " + problem.pairing().id(), problem.pairing() != Pairing.OPPOSING);
    list(parts, "include", problem.include());
    list(parts, "exclude", problem.exclude());
    list(
        parts,
        "keep",
        problem.keep().stream().map(keep -> keep.at() + "=" + keep.exercise()).toList());
    list(parts, "likes", problem.likes());
    list(parts, "dislikes", problem.dislikes());
    add(parts, "seed " + problem.seed(), problem.seed() != 1);
    return parts.isEmpty() ? "defaults" : String.join("; ", parts);
  }

  private static void clock(List<String> parts, Problem problem) {
    Intervals clock = problem.clock();
    Intervals express = Intervals.EXPRESS;
    add(parts, "getReady " + clock.getReady(), clock.getReady() != express.getReady());
    add(parts, "warmUp " + clock.warmUp(), clock.warmUp() != express.warmUp());
    add(parts, "work " + clock.work(), clock.work() != express.work());
    add(parts, "switch " + clock.between(), clock.between() != express.between());
    add(parts, "rest " + clock.rest(), clock.rest() != express.rest());
    add(parts, "coolDown " + clock.coolDown(), clock.coolDown() != express.coolDown());
    add(parts, "per " + clock.perSuperset(), clock.perSuperset() != express.perSuperset());
    add(parts, "rounds " + clock.rounds(), clock.rounds() != express.rounds());
  }

  private static String targets(List<Target> targets) {
    if (targets.equals(defaults(muscle -> true))) {
      return "whole";
    }
    for (Region region : Region.values()) {
      if (targets.equals(defaults(muscle -> muscle.region() == region))) {
        return region.id();
      }
    }
    return join(targets.stream().map(ProblemText::target).toList());
  }

  private static List<Target> defaults(Predicate<Muscle> which) {
    return AskFixture.CATALOGUE.muscles().values().stream()
        .filter(Muscle::defaultTarget)
        .filter(which)
        .map(muscle -> new Target(muscle.id(), 1, 1))
        .toList();
  }

  private static String target(Target target) {
    return target.muscle()
        + (target.emphasis() == 1 ? "" : "*" + target.emphasis())
        + (target.minSets() == 1 ? "" : ">=" + target.minSets());
  }

  private static String owned(Owned owned) {
    String kg =
        owned.kg().isEmpty()
            ? ""
            : "@" + owned.kg().stream().map(String::valueOf).collect(Collectors.joining("+"));
    String loads =
        owned.loads().size() == 3
            ? ""
            : "(" + owned.loads().stream().map(Load::id).collect(Collectors.joining("+")) + ")";
    return owned.id() + ":" + owned.count() + kg + loads;
  }

  private static void list(List<String> parts, String name, Collection<String> values) {
    add(parts, name + " " + join(values), !values.isEmpty());
  }

  private static String join(Collection<String> values) {
    return String.join(" ", values);
  }

  private static void add(List<String> parts, String part, boolean differs) {
    if (differs) {
      parts.add(part);
    }
  }
}
