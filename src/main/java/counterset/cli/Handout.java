package counterset.cli;

import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.training.LoadAdvice;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/**
 * A plan to be written to files.
 *
 * @param loads advice on loads; empty if no journal was read
 * @param day of the session, if it is known
 * @param start when the session begins, if it is known
 */
record Handout(
    Plan plan,
    Catalogue catalogue,
    List<LoadAdvice> loads,
    Optional<LocalDate> day,
    Optional<LocalTime> start) {

  /** A plan of which no more is known than it says itself. */
  Handout(Plan plan, Catalogue catalogue) {
    this(plan, catalogue, List.of(), plan.problem().date(), Optional.empty());
  }
}
