package counterset.explain;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.Item;
import counterset.model.Plan;
import counterset.model.Superset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What comes next: the exercises of a superset with their equipment, and how to get there. */
final class NextWords {

  /** An unhurried speaker (common practice, no source). */
  private static final int WORDS_IN_TEN_SECONDS = 25;

  private final Plan plan;
  private final Catalogue catalogue;
  private final Course course;
  private final ItemWords items;
  private final HandlingWords handling;
  private final ModificationWords modifications;

  NextWords(Plan plan, Catalogue catalogue, Course course) {
    this.plan = plan;
    this.catalogue = catalogue;
    this.course = course;
    this.items = new ItemWords(plan.problem());
    this.handling = new HandlingWords(plan.problem(), catalogue);
    this.modifications = new ModificationWords(plan, catalogue);
  }

  /** The next work interval. */
  Optional<Interval> work(Interval interval) {
    return course.nextWork(interval);
  }

  /** What has to be handled before the next work interval. */
  List<String> handling(Interval interval) {
    return course.changeoverIn(interval).map(handling::sentences).orElse(List.of());
  }

  /** How to get from a warm-up move to the first exercise. */
  Optional<String> way(Exercise from, Exercise to) {
    return handling.move(from.position(), to.position());
  }

  /** The exercises of the superset that a work interval begins, each with its equipment. */
  String exercises(Interval first) {
    Superset superset = superset(first.at().orElseThrow().superset());
    List<Exercise> exercises = superset.distinct();
    if (superset.isUnilateral()) {
      return with(exercises.get(0)) + ", left side, then right side";
    }
    List<String> needs = exercises.stream().map(this::needs).distinct().toList();
    if (needs.size() == 1 && exercises.size() > 1) {
      String all = String.join(", then ", exercises.stream().map(Exercise::name).toList());
      String how = exercises.size() == 2 ? ", both with " : ", all with ";
      return needs.get(0).isEmpty() ? all : all + how + needs.get(0);
    }
    return String.join(", then ", exercises.stream().map(this::with).toList());
  }

  /** What some do instead in the superset that a work interval begins. */
  List<String> modifications(Interval first) {
    return modifications.before(first);
  }

  private String with(Exercise exercise) {
    String needs = needs(exercise);
    return exercise.name() + (needs.isEmpty() ? "" : " with " + needs);
  }

  private String needs(Exercise exercise) {
    return items.said(
        Items.handled(exercise, catalogue).stream()
            .filter(item -> !isNamed(item, exercise))
            .toList());
  }

  /** Whether the name of an exercise says all of an item: "Loop-band clam". */
  private static boolean isNamed(Item item, Exercise exercise) {
    String name = exercise.name().toLowerCase(Locale.ROOT).replace('-', ' ');
    String equipment = item.equipment().name().toLowerCase(Locale.ROOT).replaceAll("s$", "");
    return item.count() == 1 && item.load().isEmpty() && name.contains(equipment);
  }

  /** The superset of a number. */
  Superset superset(int number) {
    return plan.session().supersets().stream()
        .filter(s -> s.number() == number)
        .findFirst()
        .orElseThrow();
  }

  /** Whether reading all sentences takes longer than so many seconds. */
  static boolean isTooLong(List<String> sentences, int seconds) {
    int words = String.join(" ", sentences).split(" ").length;
    return words > WORDS_IN_TEN_SECONDS * seconds / 10;
  }
}
