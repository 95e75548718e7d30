package counterset.cli;

import counterset.model.Problem;
import counterset.model.WeekProblem;
import counterset.model.WeekProblem.EarlierSession;
import counterset.model.WeekSession;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** The same week but for one thing. */
final class WeekChange {

  private WeekChange() {}

  /** With another seed, in all its sessions too. */
  static WeekProblem seed(WeekProblem week, long seed) {
    return of(week, sessions(week, it -> it.problem().withSeed(seed)), week.earlier(), seed);
  }

  /** With other sessions. */
  static WeekProblem sessions(WeekProblem week, List<WeekSession> sessions) {
    return of(week, sessions, week.earlier(), week.seed());
  }

  /** After other sessions. */
  static WeekProblem earlier(
      WeekProblem week, List<EarlierSession> earlier, UnaryOperator<WeekSession> change) {
    return of(week, sessions(week, it -> change.apply(it).problem()), earlier, week.seed());
  }

  private static List<WeekSession> sessions(
      WeekProblem week, Function<WeekSession, Problem> change) {
    List<WeekSession> sessions = new ArrayList<>();
    week.sessions().forEach(it -> sessions.add(new WeekSession(it.day(), change.apply(it))));
    return sessions;
  }

  private static WeekProblem of(
      WeekProblem week, List<WeekSession> sessions, List<EarlierSession> earlier, long seed) {
    return new WeekProblem(
        week.title(),
        sessions,
        earlier,
        week.setRanges(),
        week.recoveryIsRule(),
        week.weights(),
        seed);
  }
}
