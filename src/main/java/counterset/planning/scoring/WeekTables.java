package counterset.planning.scoring;

import counterset.planning.Candidate;
import counterset.planning.EarlierDay;
import counterset.planning.WeekDay;
import counterset.planning.WeekFacts;
import counterset.planning.WeekRules;
import counterset.planning.WeekTarget;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A week as numbers. Exercises, families and muscle groups have one number in all sessions; the
 * sessions of the week are the first rows, those before it follow.
 */
final class WeekTables {

  final int rows;
  final int sessions;
  final int muscles;

  /** By session and candidate. */
  final int[][] root;

  final int[][] family;

  /** By session, candidate: what it gives each target, in half sets a round. */
  final int[][][] halfSets;

  /** By session and other row: what a repetition costs, and whether recovery is short. */
  final int[][] rootPoints;

  final int[][] familyPoints;
  final boolean[][] recoveryShort;

  final int[] rounds;

  /** By muscle: whether it is to be trained on two days. */
  final boolean[] onSeveralDays;

  private final Map<String, Integer> roots = new HashMap<>();
  private final Map<String, Integer> families = new HashMap<>();
  private final Map<String, Integer> muscleNumbers = new HashMap<>();

  WeekTables(WeekFacts facts) {
    List<WeekDay> days = facts.days();
    sessions = days.size();
    rows = sessions + facts.earlier().size();
    facts.catalogue().muscles().keySet().forEach(m -> muscleNumbers.put(m, muscleNumbers.size()));
    muscles = muscleNumbers.size();
    root = new int[sessions][];
    family = new int[sessions][];
    halfSets = new int[sessions][][];
    rounds = new int[sessions];
    for (WeekDay day : days) {
      compile(day, facts.targets());
    }
    facts.earlier().forEach(this::number);
    rootPoints = new int[sessions][rows];
    familyPoints = new int[sessions][rows];
    recoveryShort = new boolean[sessions][rows];
    compileDistances(facts);
    onSeveralDays = new boolean[muscles];
    for (WeekTarget target : facts.targets()) {
      onSeveralDays[muscle(target.muscle())] = target.onSeveralDays();
    }
  }

  private void compile(WeekDay day, List<WeekTarget> targets) {
    List<Candidate> candidates = day.facts().candidates();
    rounds[day.index()] = day.facts().clock().rounds();
    root[day.index()] =
        candidates.stream().mapToInt(c -> number(roots, c.exercise().root())).toArray();
    family[day.index()] =
        candidates.stream().mapToInt(c -> number(families, c.exercise().family())).toArray();
    halfSets[day.index()] =
        candidates.stream()
            .map(c -> targets.stream().mapToInt(target -> halves(c, target)).toArray())
            .toArray(int[][]::new);
  }

  private static int halves(Candidate candidate, WeekTarget target) {
    if (candidate.exercise().primary().contains(target.muscle())) {
      return 2;
    }
    return candidate.exercise().secondary().contains(target.muscle()) ? 1 : 0;
  }

  private void number(EarlierDay earlier) {
    earlier.roots().forEach(id -> number(roots, id));
    earlier.families().forEach(id -> number(families, id));
  }

  private static int number(Map<String, Integer> numbers, String id) {
    return numbers.computeIfAbsent(id, key -> numbers.size());
  }

  private void compileDistances(WeekFacts facts) {
    List<Integer> dayOfRow = new ArrayList<>();
    facts.days().forEach(day -> dayOfRow.add(day.day()));
    facts.earlier().forEach(earlier -> dayOfRow.add(earlier.day()));
    for (int session = 0; session < sessions; session++) {
      for (int row = 0; row < rows; row++) {
        if (row != session) {
          int apart = Math.abs(dayOfRow.get(session) - dayOfRow.get(row));
          rootPoints[session][row] = WeekRules.exercisePoints(apart);
          familyPoints[session][row] = WeekRules.familyPoints(apart);
          recoveryShort[session][row] = WeekRules.isRecoveryShort(apart);
        }
      }
    }
  }

  int roots() {
    return roots.size();
  }

  int families() {
    return families.size();
  }

  int root(String id) {
    return roots.get(id);
  }

  int family(String id) {
    return families.get(id);
  }

  /** The number of a muscle group; the same as its bit in {@link Candidate#primary()}. */
  int muscle(String id) {
    return muscleNumbers.get(id);
  }
}
