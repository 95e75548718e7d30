package counterset.referee;

import counterset.model.Catalogue;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.score.Candidate;
import counterset.score.ExerciseFilter;
import counterset.score.Merit;
import counterset.score.SessionFacts;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a problem asks for as a whole: how many places there are, and which movement patterns are
 * wanted. What an exercise is worth by itself ({@link Merit}) is read from the program.
 */
final class Request {

  private static final int FEW = 6;

  private final Problem problem;
  private final Catalogue catalogue;
  private final SessionFacts facts;
  private final Shares shares;
  private final List<String> wanted;

  Request(Problem problem, Catalogue catalogue, int supersets) {
    this.problem = problem;
    this.catalogue = catalogue;
    this.facts =
        new SessionFacts(
            problem, catalogue, new ExerciseFilter(problem, catalogue).main(), supersets);
    this.shares = new Shares(problem, catalogue);
    Set<String> fillable =
        facts.candidates().stream()
            .filter(c -> c.usable() && (!c.unilateral() || perSuperset() == 2))
            .filter(c -> c.merit().fillsPattern())
            .map(this::pattern)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    shares.handOn(catalogue.wants().patterns(), fillable);
    this.wanted =
        fillable.stream()
            .filter(pattern -> 4 * shares.due(pattern) * places() >= 3 * shares.unit())
            .toList();
  }

  Problem problem() {
    return problem;
  }

  Catalogue catalogue() {
    return catalogue;
  }

  Shares shares() {
    return shares;
  }

  int supersets() {
    return facts.supersets();
  }

  int perSuperset() {
    return problem.clock().perSuperset();
  }

  int places() {
    return supersets() * perSuperset();
  }

  /** What the program knows of an exercise; empty for one that it leaves out before it begins. */
  Optional<Candidate> candidate(String exercise) {
    return facts.candidate(exercise);
  }

  List<Candidate> candidates() {
    return facts.candidates();
  }

  /** All exercises that nothing speaks against. */
  List<Candidate> usable() {
    return facts.candidates().stream().filter(Candidate::usable).toList();
  }

  /** The id of the movement pattern of an exercise. */
  String pattern(Candidate candidate) {
    return facts.patterns().id(candidate.merit().pattern());
  }

  /** The patterns that come to three quarters of a place or more, and that something can fill. */
  List<String> wanted() {
    return wanted;
  }

  /** Whether a muscle group is asked for by its own name, or one more than another. */
  boolean isSharedByMuscle() {
    int first = problem.targets().get(0).emphasis();
    return problem.targets().stream()
        .anyMatch(
            target ->
                target.emphasis() != first
                    || !shares.isOfRegion(catalogue.muscles().get(target.muscle())));
  }

  /** Whether so few patterns are wanted that the same muscles must come again. */
  boolean isNarrow() {
    return wanted.size() < FEW || shares.isForLegs();
  }

  /** Whether nothing but the upper body is asked for. */
  boolean isForUpperBody() {
    return problem.targets().stream()
        .map(target -> catalogue.muscles().get(target.muscle()).region())
        .allMatch(Region.UPPER::equals);
  }
}
