package counterset.catalogue;

import counterset.json.InvalidInputException;
import counterset.json.Shown;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Limitation;
import counterset.model.Part;
import counterset.model.Region;
import counterset.spelling.Nearest;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A choice of exercises; every condition narrows it. An id that the catalogue does not have is an
 * {@link InvalidInputException} with the nearest one.
 */
public final class CatalogueQuery {

  private final Catalogue catalogue;
  private final Predicate<Exercise> chosen;

  private CatalogueQuery(Catalogue catalogue, Predicate<Exercise> chosen) {
    this.catalogue = catalogue;
    this.chosen = chosen;
  }

  /** All exercises. */
  public static CatalogueQuery of(Catalogue catalogue) {
    return new CatalogueQuery(catalogue, exercise -> true);
  }

  /** Those with a primary muscle group of the region. */
  public CatalogueQuery region(Region region) {
    return and(
        exercise ->
            exercise.primary().stream()
                .anyMatch(id -> catalogue.muscles().get(id).region() == region));
  }

  /** Those with the primary muscle group. */
  public CatalogueQuery muscle(String id) {
    check("muscle", id, catalogue.muscles().keySet());
    return and(exercise -> exercise.primary().contains(id));
  }

  /**
   * Those that need the equipment; {@code none} for those that need nothing but what is always
   * there.
   */
  public CatalogueQuery equipment(String id) {
    if (id.equals("none")) {
      return and(exercise -> Gaps.handled(catalogue, exercise).isEmpty());
    }
    check("equipment", id, catalogue.equipment().keySet());
    return and(exercise -> exercise.needs().stream().anyMatch(need -> need.equipment().equals(id)));
  }

  /** Those that someone with the limitation may do. */
  public CatalogueQuery limitation(String id) {
    check("limitation", id, catalogue.limitations().keySet());
    Limitation limitation = catalogue.limitations().get(id);
    return and(limitation::allows);
  }

  /** Those made for the part of a session. */
  public CatalogueQuery part(Part part) {
    return and(exercise -> exercise.part() == part);
  }

  /** Those of the movement pattern. */
  public CatalogueQuery pattern(String pattern) {
    Stream<String> patterns = catalogue.exercises().values().stream().map(Exercise::pattern);
    check("pattern", pattern, patterns.collect(Collectors.toSet()));
    return and(exercise -> exercise.pattern().equals(pattern));
  }

  /** Those of the level or below. */
  public CatalogueQuery level(int level) {
    return and(exercise -> exercise.level() <= level);
  }

  /** Those with all words of the text, in any case, in their id, family, pattern, name or names. */
  public CatalogueQuery text(String text) {
    List<String> words = Arrays.asList(text.strip().toLowerCase(Locale.ROOT).split("\\s+"));
    return and(exercise -> words.stream().allMatch(words(exercise)::contains));
  }

  /** The chosen exercises in the order of the catalogue. */
  public List<Exercise> list() {
    return catalogue.exercises().values().stream().filter(chosen).toList();
  }

  private CatalogueQuery and(Predicate<Exercise> condition) {
    return new CatalogueQuery(catalogue, chosen.and(condition));
  }

  private static String words(Exercise exercise) {
    Stream<String> own =
        Stream.of(exercise.id(), exercise.family(), exercise.pattern(), exercise.name());
    return Stream.concat(own, exercise.names().stream())
        .collect(Collectors.joining("\n"))
        .toLowerCase(Locale.ROOT);
  }

  private static void check(String kind, String id, Collection<String> known) {
    if (!known.contains(id)) {
      throw InvalidInputException.of(
          "catalogue",
          "The " + kind + " (" + Shown.of(id) + ") is not known." + Nearest.maybe(id, known));
    }
  }
}
