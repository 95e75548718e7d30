package counterset.explain;

import counterset.explain.Turnover.Part;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Item;
import counterset.model.Joint;
import counterset.model.Match;
import counterset.model.Muscle;
import counterset.model.Owned;
import counterset.planning.constraints.SessionConstraint;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The names of what came or went. */
final class PartNames {

  /** The demand from which on a joint counts as strained. */
  private static final int STRAIN = 2;

  private final Catalogue catalogue;

  PartNames(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** The muscle group, equipment or exercise that no place tells. */
  String subject(Part part) {
    return named(part).subject(part.match());
  }

  /** The equipment that it is about, within a sentence: {@code the loop band}. */
  String equipment(Part part) {
    String id = part.match().subject().orElse("");
    return Optional.ofNullable(catalogue.equipment().get(id))
        .map(equipment -> new Item(equipment, count(id, part), Optional.empty()))
        .map(new ItemWords(part.plan().problem())::saidAgain)
        .orElse(id);
  }

  private static int count(String equipment, Part part) {
    return part.plan().problem().equipment().stream()
        .filter(owned -> owned.id().equals(equipment))
        .mapToInt(Owned::count)
        .findFirst()
        .orElse(1);
  }

  /** The exercise at the first place. */
  String exercise(Part part) {
    return exercises(part).findFirst().map(Exercise::name).orElse("an exercise");
  }

  /** The exercise at the last place. */
  String other(Part part) {
    return exercises(part).reduce((first, second) -> second).map(Exercise::name).orElse("another");
  }

  /** Whether both places hold one exercise. */
  boolean isTwice(Part part) {
    return exercises(part).distinct().count() == 1;
  }

  /** {@code 3A to 3B}. */
  static String places(Part part) {
    List<String> places = part.match().places().stream().map(At::toString).distinct().toList();
    return String.join(" to ", places);
  }

  /** The superset of the first place. */
  int superset(Part part) {
    return part.match().places().get(0).superset();
  }

  /** The muscle groups that both exercises train first. */
  String muscles(Part part) {
    List<Exercise> both = exercises(part).toList();
    List<String> names =
        both.get(0).primary().stream()
            .filter(both.get(both.size() - 1).primary()::contains)
            .map(catalogue.muscles()::get)
            .map(Muscle::name)
            .map(English::lower)
            .toList();
    return English.list(names);
  }

  /** The joints that both exercises strain. */
  String joints(Part part) {
    List<Exercise> both = exercises(part).toList();
    List<String> names =
        Stream.of(Joint.values())
            .filter(joint -> both.stream().allMatch(e -> e.demandOn(joint) >= STRAIN))
            .map(joint -> joint.id().replace('-', ' '))
            .toList();
    return English.list(names);
  }

  /** What the exercise breaks. */
  String limitations(Part part) {
    RuleWords rules = new RuleWords(part.plan().problem(), catalogue);
    return exercises(part).findFirst().map(rules::broken).orElse("a limitation");
  }

  /** What the exercise needs and the client does not have. */
  String missing(Part part) {
    RuleWords rules = new RuleWords(part.plan().problem(), catalogue);
    return exercises(part).findFirst().map(rules::missing).orElse("more");
  }

  private Stream<Exercise> exercises(Part part) {
    MatchNames named = named(part);
    return part.match().places().stream().map(named::exercise).flatMap(Optional::stream);
  }

  /** What a modification stands beside is told of everybody's session. */
  private MatchNames named(Part part) {
    SessionConstraint constraint = ScoreWords.constraint(part.match().constraint());
    Match match = part.match();
    return switch (constraint) {
      case MODIFICATION_MISSING, MODIFICATION_AWKWARD -> new MatchNames(part.plan(), catalogue);
      default -> new MatchNames(TrackFaultWords.planOf(match, part.plan()), catalogue);
    };
  }
}
