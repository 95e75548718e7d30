package counterset.explain;

import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Item;
import counterset.model.Keep;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Superset;
import counterset.model.Target;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Why a superset is what it is. */
public final class Reasons {

  private final Plan plan;
  private final Course course;
  private final KindWords kinds;
  private final ItemWords items;

  /** Reasons for the supersets of one plan. */
  public Reasons(Plan plan, Catalogue catalogue) {
    this.plan = plan;
    this.course = new Course(plan, catalogue);
    this.kinds = new KindWords(catalogue);
    this.items = new ItemWords(plan.problem());
  }

  /**
   * Sentences on its pairing, the targets it covers and the equipment it keeps; none if it is not
   * filled.
   */
  public List<String> of(Superset superset) {
    List<String> sentences = new ArrayList<>();
    if (superset.exercises().isEmpty()) {
      return sentences;
    }
    sentences.add(kinds.sentence(superset));
    sentences.add(targets(superset));
    equipment(superset).ifPresent(sentences::add);
    wishes(superset).forEach(sentences::add);
    return sentences;
  }

  private String targets(Superset superset) {
    Set<String> direct =
        plan.problem().targets().stream()
            .map(Target::muscle)
            .filter(
                muscle ->
                    superset.exercises().stream()
                        .anyMatch(exercise -> exercise.primary().contains(muscle)))
            .collect(Collectors.toCollection(LinkedHashSet::new));
    return direct.isEmpty()
        ? "Trains no target directly."
        : "Trains directly: " + kinds.muscles(direct) + ".";
  }

  /** Whatever was in use before it and is in use to its end. */
  private Optional<String> equipment(Superset superset) {
    List<Interval> own =
        plan.timeline().stream().filter(interval -> isIn(interval, superset)).toList();
    if (own.isEmpty()) {
      return Optional.empty();
    }
    List<Item> kept = new ArrayList<>(course.inUse(own.get(0)));
    own.forEach(interval -> kept.retainAll(course.inUse(interval)));
    if (kept.isEmpty()) {
      boolean none = own.stream().map(course::inUse).allMatch(List::isEmpty);
      return none ? Optional.of("Nothing to handle.") : Optional.empty();
    }
    Optional<Interval> before = course.lastWork(own.get(0));
    boolean fromBefore =
        before.map(course::inUse).filter(inUse -> inUse.containsAll(kept)).isPresent();
    String names = English.capital(English.list(kept.stream().map(items::saidAgain).toList()));
    boolean several = kept.size() > 1 || items.noun(kept.get(0)).endsWith("s");
    String stay = several ? " stay" : " stays";
    return Optional.of(
        names + stay + " in use throughout" + (fromBefore ? ", as before it." : "."));
  }

  private static boolean isIn(Interval interval, Superset superset) {
    return interval.kind() == IntervalKind.WORK
        && interval.at().orElseThrow().superset() == superset.number();
  }

  private Stream<String> wishes(Superset superset) {
    Problem problem = plan.problem();
    Stream<String> kept =
        problem.keep().stream()
            .filter(keep -> keep.at().superset() == superset.number() && stands(superset, keep))
            .map(
                keep ->
                    superset.exercises().get(keep.at().position()).name()
                        + " is kept here as you asked.");
    Stream<String> included =
        superset.distinct().stream()
            .filter(exercise -> problem.include().contains(exercise.id()))
            .map(exercise -> exercise.name() + " is in because you asked for it.");
    return Stream.concat(kept, included).distinct();
  }

  private static boolean stands(Superset superset, Keep keep) {
    int position = keep.at().position();
    return position < superset.exercises().size()
        && superset.exercises().get(position).id().equals(keep.exercise());
  }
}
