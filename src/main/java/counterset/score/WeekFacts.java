package counterset.score;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Target;
import counterset.model.WeekProblem;
import counterset.model.WeekProblem.EarlierSession;
import counterset.model.WeekSession;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A week and the facts of its sessions, compiled for scoring. Shared by all solver threads. */
public final class WeekFacts {

  private final WeekProblem problem;
  private final Catalogue catalogue;
  private final List<WeekDay> days;
  private final List<EarlierDay> earlier;
  private final List<WeekTarget> targets;

  /**
   * Compiles a week.
   *
   * @param sessions the facts of its sessions, in the order of the problem
   */
  public WeekFacts(WeekProblem problem, Catalogue catalogue, List<SessionFacts> sessions) {
    this.problem = problem;
    this.catalogue = catalogue;
    List<WeekDay> compiled = new ArrayList<>();
    for (WeekSession session : problem.sessions()) {
      int index = compiled.size();
      compiled.add(new WeekDay(index, session.day().ordinal(), sessions.get(index)));
    }
    this.days = List.copyOf(compiled);
    List<EarlierDay> before = new ArrayList<>();
    problem.earlier().forEach(session -> before.add(earlier(before.size(), session)));
    this.earlier = List.copyOf(before);
    this.targets = compileTargets();
  }

  private EarlierDay earlier(int index, EarlierSession session) {
    Set<String> roots = new LinkedHashSet<>();
    Set<String> families = new LinkedHashSet<>();
    for (String id : session.exercises()) {
      Exercise exercise = catalogue.exercises().get(id);
      roots.add(exercise == null ? id : exercise.root());
      if (exercise != null) {
        families.add(exercise.family());
      }
    }
    return new EarlierDay(
        index, -session.daysBeforeMonday(), roots, families, session.directSets());
  }

  /** What sessions have for a target, in the order they come up; then what only has a range. */
  private List<WeekTarget> compileTargets() {
    List<String> asked =
        days.stream()
            .flatMap(day -> day.facts().problem().targets().stream())
            .map(Target::muscle)
            .toList();
    Set<String> muscles =
        Stream.concat(asked.stream(), problem.setRanges().keySet().stream())
            .collect(Collectors.toCollection(LinkedHashSet::new));
    List<WeekTarget> compiled = new ArrayList<>();
    for (String muscle : muscles) {
      boolean several = asked.stream().filter(muscle::equals).count() > 1;
      compiled.add(new WeekTarget(compiled.size(), muscle, problem.range(muscle), several));
    }
    return List.copyOf(compiled);
  }

  public WeekProblem problem() {
    return problem;
  }

  public Catalogue catalogue() {
    return catalogue;
  }

  /** The sessions, in the order of the problem. */
  public List<WeekDay> days() {
    return days;
  }

  /** What was done before the week, in the order of the problem. */
  public List<EarlierDay> earlier() {
    return earlier;
  }

  /** The muscle groups whose sets count. */
  public List<WeekTarget> targets() {
    return targets;
  }
}
