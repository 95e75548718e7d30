package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Done;
import counterset.model.Exercise;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.WeekProblem;
import counterset.model.WeekProblem.EarlierSession;
import counterset.model.WeekSession;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The sessions of a week as somebody asks for them who plans one after another: each knows as
 * recently used what the days before it do.
 */
final class OneByOne {

  /** Any Monday, for sessions without a date: only distances count. */
  private static final LocalDate MONDAY = LocalDate.of(2001, 1, 1);

  private final WeekProblem problem;
  private final Catalogue catalogue;
  private final Session[] planned;

  OneByOne(WeekProblem problem, Catalogue catalogue) {
    this.problem = problem;
    this.catalogue = catalogue;
    this.planned = new Session[problem.sessions().size()];
  }

  /** The numbers of the sessions from Monday to Sunday. */
  List<Integer> order() {
    List<Integer> order = new ArrayList<>();
    for (int session = 0; session < planned.length; session++) {
      order.add(session);
    }
    order.sort(Comparator.comparing(session -> problem.sessions().get(session).day()));
    return order;
  }

  /** What is asked of a session after those that were planned. */
  Problem problem(int session) {
    WeekSession asked = problem.sessions().get(session);
    LocalDate today = today(asked);
    List<Done> recent = new ArrayList<>(asked.problem().recent());
    for (EarlierSession earlier : problem.earlier()) {
      int daysAgo = asked.day().ordinal() + earlier.daysBeforeMonday();
      recent.add(
          new Done(
              today.minusDays(daysAgo),
              earlier.exercises().stream().filter(catalogue.exercises()::containsKey).toList()));
    }
    for (int other = 0; other < planned.length; other++) {
      if (planned[other] != null) {
        int daysAgo = asked.day().ordinal() - problem.sessions().get(other).day().ordinal();
        recent.add(
            new Done(today.minusDays(daysAgo), planned[other].work().map(Exercise::id).toList()));
      }
    }
    return asked.problem().after(recent, Optional.of(today));
  }

  private static LocalDate today(WeekSession asked) {
    return asked
        .problem()
        .date()
        .or(
            () ->
                asked.problem().recent().stream()
                    .map(Done::date)
                    .max(Comparator.naturalOrder())
                    .map(last -> last.plusDays(1)))
        .orElse(MONDAY.plusDays(asked.day().ordinal()));
  }

  /** Takes note of a session that was planned. */
  void planned(int session, Session result) {
    planned[session] = result;
  }
}
