package counterset.explain;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Plan;
import counterset.model.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is said before the supersets and after them. */
final class MoveWords {

  private final Plan plan;
  private final Course course;
  private final NextWords next;
  private final HandlingWords handling;
  private final ModificationWords modifications;

  MoveWords(Plan plan, Catalogue catalogue, Course course, NextWords next) {
    this.plan = plan;
    this.course = course;
    this.next = next;
    this.handling = new HandlingWords(plan.problem(), catalogue);
    this.modifications = new ModificationWords(plan, catalogue);
  }

  /** At the very beginning: the first exercises where no warm-up comes between. */
  List<String> before(Interval interval) {
    return isBeforeWork(interval) ? coming(interval) : List.of();
  }

  List<String> warmUp(Interval interval) {
    List<String> sentences = new ArrayList<>();
    boolean first = isFirst(interval);
    if (interval.exercise().isEmpty()) {
      sentences.add("Warm up: move every joint gently, then a little faster.");
    } else {
      if (first) {
        sentences.add("Warm-up.");
      }
      sentences.addAll(move(interval));
    }
    if (first) {
      sentences.add("Go at your own pace and stop if anything hurts sharply.");
    }
    if (isBeforeWork(interval)) {
      sentences.addAll(coming(interval));
    }
    return sentences;
  }

  List<String> coolDown(Interval interval) {
    List<String> sentences = new ArrayList<>();
    if (isFirst(interval)) {
      sentences.add("The work is done.");
      Optional<Interval> before = course.lastWork(interval);
      before
          .map(course::inUse)
          .map(handling::allAway)
          .filter(text -> !text.isEmpty())
          .ifPresent(sentences::add);
      Optional<Exercise> last = before.flatMap(Interval::exercise);
      last.flatMap(work -> interval.exercise().flatMap(move -> next.way(work, move)))
          .ifPresent(sentences::add);
    }
    if (interval.exercise().isEmpty()) {
      sentences.add("Slow down and breathe.");
    } else {
      sentences.addAll(move(interval));
    }
    return sentences;
  }

  private List<String> move(Interval interval) {
    Exercise exercise = interval.exercise().orElseThrow();
    boolean second = interval.side().filter(side -> side == Side.RIGHT).isPresent();
    List<String> sentences = new ArrayList<>();
    sentences.add(second ? "The other side." : WorkWords.name(interval) + ".");
    sentences.addAll(modifications.duringMove(interval));
    WorkWords.cue(exercise, second ? 1 : 0).ifPresent(sentences::add);
    return sentences;
  }

  private List<String> coming(Interval interval) {
    Interval work = next.work(interval).orElseThrow();
    List<String> sentences = new ArrayList<>();
    sentences.add("First " + BlockWords.name(plan) + " next: " + next.exercises(work) + ".");
    Exercise first = work.exercise().orElseThrow();
    interval.exercise().flatMap(move -> next.way(move, first)).ifPresent(sentences::add);
    sentences.add(first.setup());
    sentences.addAll(next.modifications(work));
    return sentences;
  }

  private boolean isFirst(Interval interval) {
    return plan.timeline().stream()
        .filter(other -> other.kind() == interval.kind())
        .limit(1)
        .anyMatch(interval::equals);
  }

  private boolean isBeforeWork(Interval interval) {
    return plan.timeline().stream()
        .anyMatch(later -> later.start() == interval.end() && later.kind() == IntervalKind.WORK);
  }
}
