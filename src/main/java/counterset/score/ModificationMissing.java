package counterset.score;

import static counterset.score.Weight.rule;

import counterset.model.English;
import counterset.model.Exercise;
import counterset.model.Match;
import counterset.model.Problem;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Every track has a modification beside each exercise that does not suit it; a unit is an exercise
 * without one.
 */
public final class ModificationMissing extends TrackConstraint implements MatchByMatch {

  ModificationMissing() {
    super(
        "modificationMissing",
        rule("Show another exercise beside it, or swap it."),
        "Every track has a modification beside each exercise that does not suit it.",
        "per track and exercise without one",
        "Modifications missing or not suitable");
  }

  @Override
  public int measure(Candidate main, Candidate modification) {
    return modification == null ? 1 : 0;
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "place");
  }

  @Override
  public String said(Told told) {
    Told all = told.forAll();
    if (told.beside().isEmpty()) {
      return all.exercise()
          + " goes against "
          + all.broken(told.limitations())
          + ", and no modification is beside it";
    }
    Exercise beside = told.beside().get();
    Problem problem = told.plan().problem();
    Set<String> limitations = new LinkedHashSet<>(told.limitations());
    limitations.addAll(problem.limitations());
    String name = beside.name() + " instead of " + all.exercise();
    String broken = told.names().broken(beside, limitations);
    String missing = told.names().missing(beside, problem);
    if (!broken.isEmpty()) {
      return name + " goes against " + broken;
    }
    if (!missing.isEmpty()) {
      return name + " needs " + missing + ", not among the equipment";
    }
    return beside.isUnilateral() && all.work().stream().noneMatch(Exercise::isUnilateral)
        ? name + " leaves the other side out"
        : name + " is excluded, or above level " + problem.level();
  }

  @Override
  public String came(Told told) {
    return told.forAll().exercise() + " has no modification that suits";
  }

  @Override
  public String went(Told told) {
    return told.forAll().exercise() + " no longer lacks a modification that suits";
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " modifications are missing";
  }
}
