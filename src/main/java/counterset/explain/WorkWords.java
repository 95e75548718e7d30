package counterset.explain;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.Plan;
import counterset.model.Position;
import counterset.model.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is said in a work interval: the exercise, one cue, and what follows. */
final class WorkWords {

  private final Course course;
  private final HandlingWords handling;
  private final ModificationWords modifications;

  WorkWords(Plan plan, Catalogue catalogue, Course course) {
    this.course = course;
    this.handling = new HandlingWords(plan.problem(), catalogue);
    this.modifications = new ModificationWords(plan, catalogue);
  }

  List<String> of(Interval work) {
    List<String> sentences = new ArrayList<>();
    if (course.followsWithoutPause(work)) {
      course.changeoverInto(work).map(handling::sentences).ifPresent(sentences::addAll);
    }
    boolean second = work.side().filter(side -> side == Side.RIGHT).isPresent();
    if (second && work.exercise().orElseThrow().position() == Position.SIDE_LYING) {
      sentences.add("Turn over.");
    }
    sentences.add(second ? "Right side, same again." : name(work) + ".");
    sentences.addAll(modifications.during(work));
    cue(work.exercise().orElseThrow(), work.round().orElse(1) - 1 + (second ? 1 : 0))
        .ifPresent(sentences::add);
    sentences.add(after(work));
    return sentences;
  }

  /** The name of what is done, with its side. */
  static String name(Interval interval) {
    String name = interval.exercise().map(Exercise::name).orElse("");
    return name + side(interval.side()).map(side -> ", " + side).orElse("");
  }

  /** A side in words, where there is something to say. */
  static Optional<String> side(Optional<Side> side) {
    return side.flatMap(
        value ->
            switch (value) {
              case BOTH -> Optional.empty();
              case LEFT -> Optional.of("left side");
              case RIGHT -> Optional.of("right side");
              case ALTERNATING -> Optional.of("sides in turn");
            });
  }

  /** One of the cues, another one every time. */
  static Optional<String> cue(Exercise exercise, int number) {
    List<String> cues = exercise.cues();
    return cues.isEmpty() ? Optional.empty() : Optional.of(cues.get(number % cues.size()));
  }

  private String after(Interval work) {
    Optional<Interval> next = course.nextWork(work);
    if (next.isEmpty()) {
      return "This is the last one.";
    }
    boolean inside =
        next.get().at().orElseThrow().superset() == work.at().orElseThrow().superset()
            && next.get().round().equals(work.round());
    int pause = next.get().start() - work.end();
    if (!inside) {
      return pause > 0 ? "Then rest." : "Then on without rest.";
    }
    boolean otherSide = next.get().side().filter(side -> side == Side.RIGHT).isPresent();
    String what = otherSide ? "the right side" : next.get().exercise().orElseThrow().name();
    return pause > 0
        ? "Then " + pause + " seconds to switch, and " + what + "."
        : "Then straight into " + what + ", no rest.";
  }
}
