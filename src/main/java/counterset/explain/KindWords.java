package counterset.explain;

import counterset.model.Aspect;
import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Exercise;
import counterset.model.Muscle;
import counterset.model.Opposites;
import counterset.model.Region;
import counterset.model.Superset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the exercises of a superset are to each other, in plain words. */
public final class KindWords {

  private final Catalogue catalogue;
  private final Opposites opposites;

  /** Works with the muscle groups of a catalogue. */
  public KindWords(Catalogue catalogue) {
    this.catalogue = catalogue;
    this.opposites = new Opposites(catalogue);
  }

  /** A heading without a full stop: {@code front and back of the upper arm}. */
  public String heading(Superset superset) {
    List<Exercise> exercises = superset.exercises();
    if (exercises.isEmpty()) {
      return "not filled";
    }
    if (exercises.size() == 1) {
      return muscles(exercises.get(0).primary())
          + (exercises.get(0).isUnilateral() ? ", one side" : "");
    }
    List<String> links = new ArrayList<>();
    for (int i = 1; i < exercises.size(); i++) {
      links.add(link(exercises.get(i - 1), exercises.get(i)));
    }
    return String.join("; then ", new LinkedHashSet<>(links));
  }

  /** What it brings, as a sentence. */
  String sentence(Superset superset) {
    List<Exercise> exercises = superset.exercises();
    String effect = exercises.size() == 2 ? effect(exercises.get(0), exercises.get(1)) : "";
    return English.capital(heading(superset)) + (effect.isEmpty() ? "" : ": " + effect) + ".";
  }

  private String link(Exercise first, Exercise second) {
    return switch (opposites.kind(first, second)) {
      case UNILATERAL -> "one-sided: " + muscles(first.primary());
      case COMPOUND -> "the same muscle twice: " + muscles(shared(first, second));
      case AGONIST_ANTAGONIST -> antagonists(first, second);
      case OPPOSITE_REGION -> regions(first, second);
      case MIXED -> muscles(first.primary()) + " with " + muscles(second.primary());
    };
  }

  private String effect(Exercise first, Exercise second) {
    return switch (opposites.kind(first, second)) {
      case UNILATERAL -> "one side rests while the other works";
      case COMPOUND -> "done back to back without a rest for it";
      case AGONIST_ANTAGONIST, OPPOSITE_REGION, MIXED -> {
        boolean apart = Collections.disjoint(all(first), all(second));
        yield apart
            ? "one rests while the other works"
            : "the main work changes over, the helpers stay busy";
      }
    };
  }

  private static Set<String> all(Exercise exercise) {
    return Stream.concat(exercise.primary().stream(), exercise.secondary().stream())
        .collect(Collectors.toSet());
  }

  static Set<String> shared(Exercise first, Exercise second) {
    return first.primary().stream()
        .filter(second.primary()::contains)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private String antagonists(Exercise first, Exercise second) {
    for (String one : first.primary()) {
      for (String other : second.primary()) {
        Muscle here = catalogue.muscles().get(one);
        Muscle there = catalogue.muscles().get(other);
        if (here.opposes().contains(other)) {
          String names =
              "opposites: " + English.lower(here.name()) + " and " + English.lower(there.name());
          return Segments.both(here, there).map(segment -> names + ", " + segment).orElse(names);
        }
      }
    }
    return muscles(first.primary()) + " with " + muscles(second.primary());
  }

  /**
   * Upper with lower body, else front with back; knee-dominant with hip-dominant is what remains.
   */
  String regions(Exercise first, Exercise second) {
    Optional<Region> here = only(first.primary(), Muscle::region);
    Optional<Region> there = only(second.primary(), Muscle::region);
    if (here.isPresent() && there.isPresent() && here.get() != there.get()) {
      return body(here.get()) + " with " + body(there.get());
    }
    Optional<Aspect> side = only(first.primary(), Muscle::aspect);
    Optional<Aspect> otherSide = only(second.primary(), Muscle::aspect);
    if (here.isPresent() && here.equals(there) && areFrontAndBack(side, otherSide)) {
      return side.get().id() + " with " + otherSide.get().id() + " of the " + body(here.get());
    }
    return "knee-dominant with hip-dominant work";
  }

  private static boolean areFrontAndBack(Optional<Aspect> one, Optional<Aspect> other) {
    return one.isPresent()
        && other.isPresent()
        && Set.of(Aspect.FRONT, Aspect.BACK)
            .equals(Stream.of(one.get(), other.get()).collect(Collectors.toSet()));
  }

  private <T> Optional<T> only(Set<String> ids, Function<Muscle, T> feature) {
    Set<T> values =
        ids.stream().map(catalogue.muscles()::get).map(feature).collect(Collectors.toSet());
    return values.size() == 1 ? Optional.of(values.iterator().next()) : Optional.empty();
  }

  private static String body(Region region) {
    return region == Region.CORE ? "trunk" : region.id() + " body";
  }

  /** Names of muscle groups within a sentence. */
  String muscles(Collection<String> ids) {
    return English.list(
        ids.stream().map(id -> English.lower(catalogue.muscles().get(id).name())).toList());
  }
}
