package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Done;
import counterset.model.Exercise;
import counterset.model.MovementPattern;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.WeekPlan;
import counterset.model.WeekProblem;
import counterset.model.WeekProblem.EarlierSession;
import counterset.model.WeekSession;
import counterset.score.ExerciseFilter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Plans several weeks, one after the other.
 *
 * <p>The main lifts stay for a cycle of four weeks, so that they can be made harder: the first of
 * each big movement pattern is included in the session of the same day a week later. The
 * accessories change: one of them, or a variant, within two weeks costs as much as twice in a week,
 * while the others of its family are welcome, as if the coach liked them. The clock of each week is
 * {@link BlockProgress}'s. What is kept stays in all weeks.
 */
public final class BlockPlanner {

  /** The most weeks of a block. */
  public static final int MOST_WEEKS = 12;

  private static final int DAYS = 7;
  private static final int WEEKS_THAT_COUNT = 2;

  private final Catalogue catalogue;
  private final WeekPlanner planner;

  /**
   * A planner.
   *
   * @param version of this program, for the notes in plans
   */
  public BlockPlanner(Catalogue catalogue, String version) {
    this.catalogue = catalogue;
    this.planner = new WeekPlanner(catalogue, version);
  }

  /**
   * Plans a block. The sessions of later weeks have later dates, if they have dates.
   *
   * @param problem the first week
   * @param weeks 1 to 12
   * @param limit of each week
   * @throws IllegalArgumentException if there are too many weeks or too few
   */
  public List<WeekPlan> plan(WeekProblem problem, int weeks, Limit limit) {
    if (weeks < 1 || weeks > MOST_WEEKS) {
      throw new IllegalArgumentException(
          "The weeks (" + weeks + ") of a block must be 1 to " + MOST_WEEKS + ".");
    }
    List<WeekPlan> plans = new ArrayList<>();
    for (int week = 1; week <= weeks; week++) {
      plans.add(planner.plan(week(problem, week, plans), limit));
    }
    return List.copyOf(plans);
  }

  /** Ends the block soon, with the best found so far. May be called from any thread. */
  public void stop() {
    planner.stop();
  }

  private WeekProblem week(WeekProblem first, int week, List<WeekPlan> before) {
    int daysLater = DAYS * (week - 1);
    List<EarlierSession> earlier = new ArrayList<>();
    for (EarlierSession session : first.earlier()) {
      earlier.add(
          new EarlierSession(
              session.daysBeforeMonday() + daysLater, session.exercises(), session.directSets()));
    }
    for (int done = Math.max(0, before.size() - WEEKS_THAT_COUNT); done < before.size(); done++) {
      earlier.addAll(done(before.get(done), DAYS * (before.size() - done)));
    }
    return new WeekProblem(
        first.title(),
        sessions(first, week, before),
        earlier,
        first.setRanges(),
        first.recoveryIsRule(),
        first.weights(),
        first.seed());
  }

  private List<EarlierSession> done(WeekPlan week, int daysLater) {
    List<EarlierSession> sessions = new ArrayList<>();
    for (int i = 0; i < week.plans().size(); i++) {
      int day = week.problem().sessions().get(i).day().ordinal();
      sessions.add(earlier(week.plans().get(i), daysLater - day));
    }
    sessions.sort(Comparator.comparing(EarlierSession::daysBeforeMonday).reversed());
    return sessions;
  }

  private EarlierSession earlier(Plan plan, int daysBeforeMonday) {
    List<Exercise> work = plan.session().work().toList();
    Map<String, Integer> directSets = new HashMap<>();
    for (Exercise exercise : work) {
      for (String muscle : exercise.primary()) {
        directSets.merge(muscle, plan.problem().clock().rounds(), Integer::sum);
      }
    }
    Set<String> main = mainLifts(plan);
    List<String> accessories =
        work.stream().map(Exercise::id).filter(id -> !main.contains(id)).toList();
    return new EarlierSession(daysBeforeMonday, accessories, directSets);
  }

  /** The first exercise of each big movement pattern. */
  private Set<String> mainLifts(Plan plan) {
    Map<MovementPattern, String> first = new LinkedHashMap<>();
    plan.session()
        .work()
        .filter(Exercise::multiJoint)
        .forEach(
            exercise ->
                catalogue
                    .wants()
                    .patternOf(exercise)
                    .filter(MovementPattern::big)
                    .ifPresent(pattern -> first.putIfAbsent(pattern, exercise.id())));
    return new LinkedHashSet<>(first.values());
  }

  private List<WeekSession> sessions(WeekProblem first, int week, List<WeekPlan> before) {
    List<WeekSession> sessions = new ArrayList<>();
    for (WeekSession session : first.sessions()) {
      ProblemDraft draft = new ProblemDraft(session.problem());
      draft.clock = BlockProgress.clock(session.problem(), week);
      if (week > 1) {
        Plan lastTime = before.get(week - 2).plans().get(sessions.size());
        draft.likes.addAll(ofTheSameFamilies(session.problem(), lastTime, before));
        if (week % BlockProgress.CYCLE != 1) {
          draft.include.addAll(mainLifts(lastTime));
        }
      }
      Problem problem = draft.problem();
      sessions.add(
          new WeekSession(
              session.day(), problem.after(problem.recent(), date(problem, DAYS * (week - 1)))));
    }
    return sessions;
  }

  /** What a session may use of the families of another and what no week that counts has used. */
  private Set<String> ofTheSameFamilies(Problem asked, Plan lastTime, List<WeekPlan> before) {
    Set<String> families =
        lastTime.session().work().map(Exercise::family).collect(Collectors.toSet());
    Set<String> used =
        before.subList(Math.max(0, before.size() - WEEKS_THAT_COUNT), before.size()).stream()
            .flatMap(week -> week.plans().stream())
            .flatMap(plan -> plan.session().work())
            .map(Exercise::root)
            .collect(Collectors.toSet());
    return new ExerciseFilter(asked, catalogue)
        .main().stream()
            .filter(exercise -> families.contains(exercise.family()))
            .map(Exercise::root)
            .filter(root -> !used.contains(root))
            .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** Without a date a session follows the last one done: in later weeks by so many days more. */
  private static Optional<LocalDate> date(Problem problem, int daysLater) {
    if (daysLater == 0) {
      return problem.date();
    }
    return problem
        .date()
        .or(
            () ->
                problem.recent().stream()
                    .map(Done::date)
                    .max(Comparator.naturalOrder())
                    .map(last -> last.plusDays(1)))
        .map(date -> date.plusDays(daysLater));
  }
}
