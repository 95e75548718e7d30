package counterset.quality;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Part;
import counterset.quality.Spoiled.Kind;
import counterset.score.Candidate;
import counterset.score.ExerciseFilter;
import counterset.score.Merit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Faults in one place: each place of a session gets each kind of fault that the catalogue has an
 * exercise for. A one-sided exercise is replaced on both sides, by another of that kind.
 */
final class PlaceFaults {

  private static final int STAPLE = 3;

  private final Mapped mapped;
  private final Catalogue catalogue;
  private final Judged session;

  PlaceFaults(Mapped mapped, Catalogue catalogue) {
    this.mapped = mapped;
    this.catalogue = catalogue;
    this.session = mapped.judged(catalogue);
  }

  Stream<Spoiled> all() {
    List<Spoiled> faults = new ArrayList<>();
    for (int place = 0; place < session.places().size(); place++) {
      Candidate old = session.places().get(place);
      if (session.places().indexOf(old) == place) {
        for (Kind kind : List.of(Kind.LAST_RESORT, Kind.EASY, Kind.TWIN, Kind.BARE)) {
          fault(kind, old).ifPresent(faults::add);
        }
        unasked(old).ifPresent(faults::add);
      }
    }
    return faults.stream();
  }

  /** Of those that are this fault, the one most like what stands there, so that nothing else is. */
  private Optional<Spoiled> fault(Kind kind, Candidate old) {
    List<Candidate> able =
        session.facts().candidates().stream()
            .filter(it -> it.usable() && it.unilateral() == old.unilateral())
            .filter(it -> !it.merit().offTarget() && isNew(it))
            .filter(it -> is(kind, it, old))
            .toList();
    return nearest(able, old).map(it -> spoiled(kind, session, old, it));
  }

  private static Optional<Candidate> nearest(List<Candidate> able, Candidate old) {
    return able.stream()
        .min(
            Comparator.comparing((Candidate it) -> it.merit().pattern() != old.merit().pattern())
                .thenComparing(it -> it.floor() != old.floor())
                .thenComparing(it -> Long.bitCount(it.handling().needs() ^ old.handling().needs()))
                .thenComparing(it -> Math.abs(it.intensity() - old.intensity())));
  }

  private boolean isNew(Candidate exercise) {
    return session.places().stream().noneMatch(it -> it.root() == exercise.root());
  }

  private boolean is(Kind kind, Candidate it, Candidate old) {
    Merit merit = it.merit();
    boolean proper = merit.standing() > Exercise.LAST_RESORT;
    return switch (kind) {
      case LAST_RESORT -> !proper && old.merit().standing() > Exercise.LAST_RESORT;
      case EASY -> proper && !merit.isWorking() && old.merit().isWorking();
      case TWIN -> proper && merit.isWorking() && it.family() != old.family() && isTwin(it);
      case BARE -> it.family() == old.family() && old.loaded() && !it.loaded();
      default -> false;
    };
  }

  private boolean isTwin(Candidate exercise) {
    return session.places().stream().anyMatch(it -> it.family() == exercise.family());
  }

  /** Work for other muscle groups: staples that the client could do. */
  private Optional<Spoiled> unasked(Candidate old) {
    List<Exercise> asked = new ExerciseFilter(session.facts().problem(), catalogue).main();
    List<Exercise> others =
        catalogue.exercises(Part.MAIN).stream()
            .filter(it -> !asked.contains(it) && it.standing() == STAPLE)
            .filter(it -> it.isUnilateral() == old.unilateral())
            .toList();
    Judged wide = Judged.of(session.facts().problem(), catalogue, session.exercises(), others);
    List<Candidate> able =
        wide.facts().candidates().stream()
            .filter(it -> others.contains(it.exercise()) && isNewIn(wide, it))
            .filter(it -> it.usable() && it.merit().offTarget() && it.merit().isWorking())
            .toList();
    Optional<Candidate> nearest =
        nearest(able, wide.facts().candidate(old.exercise().id()).orElseThrow());
    if (old.merit().offTarget() || nearest.isEmpty()) {
      return Optional.empty();
    }
    Exercise chosen = nearest.get().exercise();
    Judged judged =
        Judged.of(session.facts().problem(), catalogue, session.exercises(), List.of(chosen));
    Candidate there = judged.facts().candidate(old.exercise().id()).orElseThrow();
    Candidate other = judged.facts().candidate(chosen.id()).orElseThrow();
    return Optional.of(spoiled(Kind.UNASKED, judged, there, other));
  }

  private static boolean isNewIn(Judged wide, Candidate exercise) {
    return wide.places().stream().noneMatch(it -> it.root() == exercise.root());
  }

  private Spoiled spoiled(Kind kind, Judged before, Candidate old, Candidate other) {
    List<Candidate> places = before.places().stream().map(it -> it == old ? other : it).toList();
    return new Spoiled(
        kind, mapped.reference().number(), other + " for " + old, before, before.with(places));
  }
}
