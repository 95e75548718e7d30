package counterset.score;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Problem;
import counterset.model.Session;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What the work of a session is for its client: its effort, its credit, the patterns it fills. */
public final class WorkDone {

  private static final double QUARTERS = 4;

  private final SessionFacts facts;
  private final List<Exercise> work;

  private WorkDone(SessionFacts facts, List<Exercise> work) {
    this.facts = facts;
    this.work = work;
  }

  /** Looks at a session of a problem, whatever stands in it. */
  public static WorkDone of(Problem problem, Catalogue catalogue, Session session) {
    List<Exercise> work = session.work().toList();
    Set<Exercise> all = new LinkedHashSet<>(new ExerciseFilter(problem, catalogue).main());
    all.addAll(work);
    return new WorkDone(
        new SessionFacts(problem, catalogue, all, session.supersets().size()), work);
  }

  /**
   * A movement pattern that the session is to have.
   *
   * @param id as in the catalogue's patterns
   * @param share of the places, 0 to 1
   * @param exercises what of the session fills it, by id; empty if it is missing
   */
  public record Pattern(String id, double share, List<String> exercises) {}

  /** The wanted patterns, in the order of the catalogue. */
  public List<Pattern> patterns() {
    return IntStream.range(0, facts.patterns().count())
        .filter(facts::isWanted)
        .mapToObj(
            pattern -> new Pattern(facts.patterns().id(pattern), share(pattern), ids(pattern)))
        .toList();
  }

  private double share(int pattern) {
    return Math.round(1000 * facts.patterns().share(pattern)) / 1000.0;
  }

  private List<String> ids(int pattern) {
    return candidates()
        .filter(it -> it.merit().pattern() == pattern && it.merit().fillsPattern())
        .map(it -> it.exercise().id())
        .distinct()
        .toList();
  }

  /** How hard one of its exercises is. */
  public EffortClass effort(Exercise exercise) {
    return facts.candidate(exercise.id()).orElseThrow().merit().effort();
  }

  /**
   * The credit of a target, in sets: one for each direct working set, half for each indirect one,
   * half of that for an easy set (fractional counting: Pelland et al. 2024, preprint).
   *
   * @param target its place among the problem's targets
   */
  public double credit(int target) {
    int quarters =
        candidates().mapToInt(it -> it.halfSets()[target] * (it.merit().isWorking() ? 2 : 1)).sum();
    return quarters / QUARTERS * facts.clock().rounds();
  }

  /** The direct sets of a target that are at least working sets. */
  public int working(int target) {
    return facts.clock().rounds()
        * (int)
            candidates().filter(it -> it.halfSets()[target] == 2 && it.merit().isWorking()).count();
  }

  private Stream<Candidate> candidates() {
    return work.stream().map(it -> facts.candidate(it.id()).orElseThrow());
  }
}
