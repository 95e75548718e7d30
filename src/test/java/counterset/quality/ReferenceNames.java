package counterset.quality;

import counterset.ask.Keys;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Need;
import counterset.model.Part;
import counterset.model.Sides;
import counterset.quality.Reference.Written;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Finds the exercise of a catalogue that a reference names.
 *
 * <p>Equipment is left out of names, since the brackets say it: two exercises whose names are the
 * same without it are one movement, and what one of them is also called, the other is too.
 */
final class ReferenceNames {

  /** Words of equipment, of the ways to say how many, and small words. */
  private static final Set<String> LEFT_OUT =
      Set.of(
          "dumbbell",
          "kettlebell",
          "band",
          "banded",
          "long",
          "loop",
          "ankle",
          "weight",
          "chair",
          "bench",
          "wall",
          "alternating",
          "on",
          "with",
          "a",
          "the",
          "at",
          "to",
          "onto",
          "of",
          "from",
          "supported");

  private static final String ON_HANDS = "wrist-extension-load";
  private static final Set<String> COMFORTS = Set.of("mat");

  /** Names that mean the same, as the head of the references says, and one word for "single". */
  private static final Map<String, String> SAME =
      Map.of(
          "one arm", "single arm",
          "shoulder press", "overhead press",
          "standing calf", "calf",
          "forearm plank", "plank",
          "wood chop", "chop",
          "woodchop", "chop",
          "pulldown", "pull down",
          "pullover", "pull over",
          "bodyweight", "");

  private final Catalogue catalogue;
  private final Map<Exercise, Set<Set<String>>> names = new LinkedHashMap<>();

  /**
   * A place as the catalogue has it.
   *
   * @param exact whether the exercise needs what the bracket says and nothing else
   */
  record Found(Exercise exercise, boolean exact) {}

  ReferenceNames(Catalogue catalogue) {
    this.catalogue = catalogue;
    Map<Exercise, Set<Set<String>>> own = new LinkedHashMap<>();
    catalogue.exercises(Part.MAIN).forEach(exercise -> own.put(exercise, own(exercise)));
    own.forEach(
        (exercise, mine) -> {
          Set<Set<String>> all = new HashSet<>(mine);
          own.forEach(
              (other, its) -> {
                if (isVersion(exercise, other) || its.stream().anyMatch(mine::contains)) {
                  all.addAll(its);
                }
              });
          names.put(exercise, all);
        });
  }

  private static Set<Set<String>> own(Exercise exercise) {
    List<String> all = new ArrayList<>(exercise.names());
    all.add(exercise.name());
    return all.stream().map(ReferenceNames::words).collect(Collectors.toSet());
  }

  /**
   * Whether two ways of doing one exercise differ in nothing but what is held, worn or stood at.
   */
  private static boolean isVersion(Exercise one, Exercise other) {
    return one.root().equals(other.root())
        && one.family().equals(other.family())
        && one.sides() == other.sides()
        && one.position() == other.position()
        && one.primary().equals(other.primary())
        && one.traits().contains(ON_HANDS) == other.traits().contains(ON_HANDS)
        && !needs(one).equals(needs(other));
  }

  /** The words that tell movements apart. */
  static Set<String> words(String name) {
    String text = " " + String.join(" ", Keys.ofName(name)) + " ";
    for (Map.Entry<String, String> same : SAME.entrySet()) {
      text = text.replace(" " + same.getKey() + " ", " " + same.getValue() + " ");
    }
    Set<String> words = new TreeSet<>(List.of(text.trim().split(" +")));
    words.removeAll(LEFT_OUT);
    return words;
  }

  /** The exercise that a place names; empty if the catalogue has none, or only for other sides. */
  Optional<Found> find(Written place) {
    Set<String> words = words(place.name());
    return names.entrySet().stream()
        .filter(it -> it.getValue().contains(words))
        .map(Map.Entry::getKey)
        .filter(it -> it.isUnilateral() == place.isOneSided() && isPossible(it, place))
        .min(
            Comparator.comparing((Exercise it) -> !isExact(it, place))
                .thenComparing(it -> !own(it).contains(words))
                .thenComparing(it -> isAlternating(it) != isAlternating(place))
                .thenComparing(it -> -it.standing())
                .thenComparing(it -> it.needs().size()))
        .map(it -> new Found(it, isExact(it, place)));
  }

  private static boolean isAlternating(Exercise exercise) {
    return exercise.sides() == Sides.ALTERNATING;
  }

  private static boolean isAlternating(Written place) {
    return place.name().startsWith("Alternating ");
  }

  /**
   * What comes nearest where the catalogue has no such name: the exercise whose longest name of two
   * words or more is part of it, as a side plank is of a side plank with a clam.
   */
  Optional<Exercise> nearest(Written place) {
    Set<String> words = words(place.name());
    return names.keySet().stream()
        .filter(it -> it.isUnilateral() == place.isOneSided() && isPossible(it, place))
        .filter(it -> shared(it, words) > 1)
        .min(
            Comparator.comparing((Exercise it) -> -shared(it, words))
                .thenComparing(it -> !isExact(it, place))
                .thenComparing(it -> -it.standing()));
  }

  private int shared(Exercise exercise, Set<String> words) {
    return names.get(exercise).stream()
        .filter(words::containsAll)
        .mapToInt(Set::size)
        .max()
        .orElse(0);
  }

  /** Why nothing was found, for whoever adds names. */
  String lack(Written place) {
    Set<String> words = words(place.name());
    List<Exercise> named =
        names.entrySet().stream()
            .filter(it -> it.getValue().contains(words))
            .map(Map.Entry::getKey)
            .toList();
    if (named.isEmpty()) {
      return "no such name";
    }
    String ids = named.stream().map(Exercise::id).collect(Collectors.joining(", "));
    boolean sided = named.stream().anyMatch(it -> it.isUnilateral() == place.isOneSided());
    return (sided ? "not with this equipment: " : "not with these sides: ") + ids;
  }

  private boolean isPossible(Exercise exercise, Written place) {
    return needs(exercise).stream()
        .allMatch(
            id -> place.equipment().contains(id) || catalogue.equipment().get(id).alwaysThere());
  }

  /** A mat is a comfort and a wall is always there; neither tells exercises apart. */
  private boolean isExact(Exercise exercise, Written place) {
    return told(needs(exercise)).equals(told(Set.copyOf(place.equipment())))
        && (needs(exercise).contains("wall") || !place.equipment().contains("wall"));
  }

  private Set<String> told(Set<String> equipment) {
    return equipment.stream()
        .filter(id -> !COMFORTS.contains(id) && !catalogue.equipment().get(id).alwaysThere())
        .collect(Collectors.toSet());
  }

  static Set<String> needs(Exercise exercise) {
    return exercise.needs().stream().map(Need::equipment).collect(Collectors.toSet());
  }
}
