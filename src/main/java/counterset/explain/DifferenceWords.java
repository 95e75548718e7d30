package counterset.explain;

import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Plan;
import counterset.score.Constraints;
import counterset.score.Level;
import counterset.score.PlanConstraint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What changes from one plan to another of the same problem, in a coach's sentences.
 *
 * <p>What goes and what comes is told together, constraint by constraint; what comes to nothing is
 * left out. The points of all differences add up to what the scores differ by, level by level.
 */
public final class DifferenceWords {

  private static final Comparator<Sentence> LARGEST_FIRST =
      Comparator.comparing((Sentence told) -> told.constraint().level())
          .thenComparing(told -> -Math.abs(told.difference().points()))
          .thenComparing(told -> Constraints.OF_SESSIONS.indexOf(told.constraint()))
          .thenComparing(Sentence::ofTracks)
          .thenComparing(told -> told.difference().sentence());

  private record Sentence(PlanConstraint constraint, boolean ofTracks, Difference difference) {}

  private DifferenceWords() {}

  /** One sentence a difference, with its points: {@code One trip to the floor less: +8}. */
  public static List<String> of(Plan from, Plan to, Catalogue catalogue) {
    return differences(from, to, catalogue).stream().map(DifferenceWords::line).toList();
  }

  /** The same taken apart: rules first, then wishes, then points, each with the largest first. */
  public static List<Difference> differences(Plan from, Plan to, Catalogue catalogue) {
    Map<List<Object>, List<Turnover>> alike = new LinkedHashMap<>();
    for (Turnover turnover : Turnover.between(from, to, new MatchNames(catalogue))) {
      if (turnover.points() != 0) {
        String clause = TurnoverWords.clause(turnover);
        alike
            .computeIfAbsent(
                List.of(turnover.constraint(), turnover.track().isPresent(), clause),
                key -> new ArrayList<>())
            .add(turnover);
      }
    }
    FollowerWords followers = new FollowerWords(to.problem(), catalogue);
    return alike.values().stream()
        .map(group -> told(group, followers))
        .sorted(LARGEST_FIRST)
        .map(Sentence::difference)
        .toList();
  }

  /** Several of them say the same of different tracks. */
  private static Sentence told(List<Turnover> group, FollowerWords followers) {
    Turnover first = group.get(0);
    String who = followers.of(group.stream().flatMap(t -> t.track().stream()).toList());
    Difference difference =
        new Difference(
            first.constraint().id(),
            first.constraint().level().id(),
            group.stream().mapToInt(Turnover::points).sum(),
            group.stream().flatMap(t -> t.places().stream()).distinct().sorted().toList(),
            English.capital(who + TurnoverWords.clause(first)));
    return new Sentence(first.constraint(), first.track().isPresent(), difference);
  }

  /** A difference with its points, and what they mean where they are more than points. */
  public static String line(Difference difference) {
    String points = ScoreWords.points(difference.points());
    boolean better = difference.points() > 0;
    String meaning = "";
    if (difference.level().equals(Level.HARD.id())) {
      meaning = better ? "mends a rule, " : "breaks a rule, ";
    } else if (difference.level().equals(Level.MEDIUM.id())) {
      meaning = better ? "a wish more, " : "a wish less, ";
    }
    return difference.sentence() + ": " + meaning + points;
  }
}
