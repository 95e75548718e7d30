package counterset.explain;

import counterset.model.English;
import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.Plan;
import counterset.model.Superset;
import counterset.timeline.Kit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What is said in a rest, and in the seconds between the exercises of a superset. */
final class RestWords {

  static final String COUNTDOWN = "Last five seconds: five, four, three, two, one.";

  private final Plan plan;
  private final NextWords next;

  RestWords(Plan plan, NextWords next) {
    this.plan = plan;
    this.next = next;
  }

  /**
   * A rest names what comes, what some do instead, how to get there, and counts down. What some do
   * instead is said again when the work begins, so that it is left out where it takes too long.
   */
  List<String> of(Interval rest) {
    Interval work = next.work(rest).orElseThrow();
    boolean sameAgain = work.at().orElseThrow().superset() == rest.at().orElseThrow().superset();
    int left = rest.seconds() - Kit.COUNTDOWN;
    List<String> said = new ArrayList<>();
    said.add("Rest.");
    said.addAll(next.handling(rest));
    if (sameAgain) {
      said.add(again(work));
    } else {
      boolean last = work.at().orElseThrow().superset() == lastFilled();
      said.add(
          (last ? "Last " + BlockWords.name(plan) + ": " : "Next: ") + next.exercises(work) + ".");
      said.addAll(more(said, work, left));
    }
    if (left >= Kit.COUNTDOWN) {
      said.add(COUNTDOWN);
    }
    return said;
  }

  /**
   * The set-ups of what comes and what some do instead, as far as there is time: all, then without
   * the set-ups of later exercises, then without any, then nothing.
   */
  private List<String> more(List<String> before, Interval work, int seconds) {
    List<String> modifications = next.modifications(work);
    List<String> first = List.of(work.exercise().orElseThrow().setup());
    List<String> all =
        next.superset(work.at().orElseThrow().superset()).distinct().stream()
            .map(it -> first.contains(it.setup()) ? it.setup() : "Then: " + it.setup())
            .toList();
    return Stream.of(joined(all, modifications), joined(first, modifications), modifications)
        .filter(more -> !NextWords.isTooLong(joined(before, more), seconds))
        .findFirst()
        .orElse(List.of());
  }

  private static List<String> joined(List<String> before, List<String> more) {
    return Stream.concat(before.stream(), more.stream()).toList();
  }

  private int lastFilled() {
    return plan.session().supersets().stream()
        .filter(superset -> !superset.exercises().isEmpty())
        .mapToInt(Superset::number)
        .max()
        .orElse(0);
  }

  private String again(Interval work) {
    Superset superset = next.superset(work.at().orElseThrow().superset());
    String round =
        ", round " + work.round().orElse(1) + " of " + plan.problem().clock().rounds() + ".";
    if (superset.isUnilateral()) {
      return "The same again, left side first" + round;
    }
    List<Exercise> exercises = superset.distinct();
    String same =
        exercises.size() == 1
            ? "The same again"
            : "Same " + English.number(exercises.size()) + " again";
    return same + round;
  }

  /** The seconds between two exercises of one superset. */
  List<String> between(Interval pause) {
    Interval work = next.work(pause).orElseThrow();
    List<String> sentences = new ArrayList<>();
    sentences.add("Switch.");
    sentences.addAll(next.handling(pause));
    sentences.add("Next: " + WorkWords.name(work) + ".");
    return sentences;
  }
}
