package counterset.planning.constraints;

import ai.timefold.solver.core.api.score.stream.ConstraintCollectors;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.uni.UniConstraintStream;
import counterset.model.Exercise;
import counterset.model.Target;
import counterset.planning.Awkwardness;
import counterset.planning.Candidate;
import counterset.planning.Place;
import counterset.planning.SessionFacts;
import counterset.planning.StandIn;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A session as the followers of one track do it.
 *
 * @param places with a candidate, in order
 */
record TrackLine(SessionFacts facts, int track, List<Place> places, List<StandIn> standIns) {

  /** One line a track, none without tracks. */
  static UniConstraintStream<TrackLine> of(ConstraintFactory factory) {
    return factory
        .forEachIncludingUnassigned(StandIn.class)
        .groupBy(StandIn::getTrack, ConstraintCollectors.toList())
        .join(Sequence.ofAny(factory))
        .map(
            (track, standIns, main) -> new TrackLine(main.facts(), track, main.places(), standIns));
  }

  /** What is done place by place. */
  List<Turn> turns() {
    return places.stream().map(this::turn).toList();
  }

  private Turn turn(Place place) {
    Candidate main = place.getCandidate();
    Place first =
        places.stream()
            .filter(other -> other.getSuperset() == place.getSuperset())
            .filter(other -> main.unilateral() && other.getCandidate() == main)
            .findFirst()
            .orElse(place);
    if (suits(main.exercise())) {
      return new Turn(track, place, main, false, first != place);
    }
    Candidate modification =
        standIns.stream()
            .filter(standIn -> standIn.getPlace() == first.getIndex())
            .map(StandIn::getCandidate)
            .filter(candidate -> candidate != null && isValid(candidate, main))
            .findFirst()
            .orElse(null);
    return new Turn(track, place, modification, true, first != place);
  }

  private boolean suits(Exercise exercise) {
    return facts.problem().tracks().get(track).stream()
        .map(facts.catalogue().limitations()::get)
        .allMatch(limitation -> limitation.allows(exercise));
  }

  private boolean isValid(Candidate candidate, Candidate main) {
    return candidate.usable()
        && suits(candidate.exercise())
        && (main.unilateral() || !candidate.unilateral());
  }

  /** Each exercise once a superset, the two sides of a unilateral one together. */
  private List<Turn> occurrences() {
    return turns().stream().filter(turn -> !turn.secondSide()).toList();
  }

  List<Turn> missing() {
    return occurrences().stream().filter(turn -> turn.candidate() == null).toList();
  }

  List<Turn> modifications() {
    return occurrences().stream()
        .filter(turn -> turn.modified() && turn.candidate() != null)
        .toList();
  }

  /** Every two occurrences of one exercise of which at least one is a modification. */
  List<Repeat> repeats() {
    List<Turn> done = occurrences().stream().filter(turn -> turn.candidate() != null).toList();
    return IntStream.range(0, done.size())
        .boxed()
        .flatMap(
            i -> done.subList(i + 1, done.size()).stream().map(b -> new Repeat(done.get(i), b)))
        .filter(Repeat::isRepeat)
        .toList();
  }

  /** The sets that each target is short of, where it is and where the track can train it. */
  List<Shortage> shortages() {
    List<Target> targets = facts.problem().targets();
    return IntStream.range(0, targets.size())
        .filter(target -> facts.canTrain(track, target))
        .mapToObj(targets::get)
        .map(t -> new Shortage(track, t.muscle(), t.minSets() - directSets(t)))
        .filter(shortage -> shortage.sets() > 0)
        .toList();
  }

  private int directSets(Target target) {
    long sets =
        occurrences().stream()
            .filter(turn -> turn.candidate() != null)
            .filter(turn -> turn.candidate().exercise().primary().contains(target.muscle()))
            .count();
    return Math.toIntExact(sets) * facts.clock().rounds();
  }

  /** Sets that a target is short of; the track is -1 for the session itself. */
  record Shortage(int track, String muscle, int sets) implements Comparable<Shortage> {

    @Override
    public int compareTo(Shortage other) {
      return Comparator.comparingInt(Shortage::track)
          .thenComparing(Shortage::muscle)
          .compare(this, other);
    }
  }

  /**
   * What followers do at a place.
   *
   * @param candidate null if what stands there does not suit them and nothing stands in for it
   * @param modified whether what stands there does not suit them
   * @param secondSide whether it is the other side of a unilateral exercise
   */
  record Turn(int track, Place place, Candidate candidate, boolean modified, boolean secondSide) {

    /** Of a modification, in points. */
    int awkwardness() {
      Exercise main = place.getCandidate().exercise();
      Exercise instead = candidate.exercise();
      return Awkwardness.of(
          Long.bitCount(candidate.handling().needs() & ~place.getCandidate().handling().needs()),
          main.position() == instead.position(),
          !Collections.disjoint(main.primary(), instead.primary()),
          place.getCandidate().loaded() && !candidate.loaded());
    }
  }

  /** Two occurrences on a track. */
  record Repeat(Turn earlier, Turn later) {

    private boolean isRepeat() {
      return (earlier.modified() || later.modified())
          && earlier.candidate().exercise().root().equals(later.candidate().exercise().root());
    }
  }
}
