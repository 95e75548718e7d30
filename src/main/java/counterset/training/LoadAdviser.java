package counterset.training;

import counterset.journal.Entry;
import counterset.journal.Lift;
import counterset.model.Exercise;
import counterset.model.Need;
import counterset.model.Owned;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Advises on loads from what was lifted before: up by the 2-for-2 rule, to the next mass that the
 * client owns, if the estimates leave enough repetitions with it.
 */
public final class LoadAdviser {

  /** The fewest repetitions to train with in little time (6 to 15 RM: Iversen 2021). */
  static final int FEWEST_REPS = 6;

  /** After so long a break nobody goes by old records (common practice, no source). */
  static final int FORGOTTEN_AFTER_DAYS = 28;

  private final List<Entry> entries;
  private final List<Owned> owned;
  private final LocalDate day;

  /**
   * An adviser for one client.
   *
   * @param entries what was done, by date
   * @param day the day of the next session
   */
  public LoadAdviser(List<Entry> entries, List<Owned> owned, LocalDate day) {
    this.entries = List.copyOf(entries);
    this.owned = List.copyOf(owned);
    this.day = day;
  }

  /** Whether an exercise is done with something to choose the mass of. */
  public static boolean isLoaded(Exercise exercise) {
    return need(exercise).isPresent();
  }

  private static Optional<Need> need(Exercise exercise) {
    return exercise.needs().stream().filter(need -> need.load().isPresent()).findFirst();
  }

  /** The advice on an exercise that is done with a load. */
  public LoadAdvice advise(Exercise exercise) {
    List<Lifted> record = record(exercise);
    AdviceWords words = new AdviceWords(record);
    if (record.isEmpty()) {
      return none(exercise, record, words.never());
    }
    Lifted last = record.get(record.size() - 1);
    long days = ChronoUnit.DAYS.between(last.date(), day);
    List<Double> masses = masses(exercise);
    if (days > FORGOTTEN_AFTER_DAYS) {
      return none(exercise, record, words.longAgo(days));
    }
    if (record.size() < 2) {
      return none(exercise, record, words.once());
    }
    if (!OneRepMax.covers(last.lastSet())) {
      return none(exercise, record, words.outOfRange());
    }
    if (masses.isEmpty()) {
      return none(exercise, record, words.noMasses());
    }
    return byRule(exercise, record, masses);
  }

  private LoadAdvice byRule(Exercise exercise, List<Lifted> record, List<Double> masses) {
    AdviceWords words = new AdviceWords(record);
    Lifted last = record.get(record.size() - 1);
    if (!masses.contains(last.kg())) {
      return none(exercise, record, words.notOwned());
    }
    if (!TwoForTwo.isMet(TwoForTwo.GOAL, lastSetsWith(last.kg(), record))) {
      return advice(exercise, record, Step.HOLD, last.kg(), words.notYet());
    }
    OptionalDouble next =
        masses.stream().mapToDouble(Double::doubleValue).filter(kg -> kg > last.kg()).min();
    if (next.isEmpty()) {
      return advice(exercise, record, Step.HOLD, last.kg(), words.heaviest());
    }
    double kg = next.getAsDouble();
    OneRepMax max = OneRepMax.of(last.kg(), last.lastSet());
    return max.fewestReps(kg) < FEWEST_REPS
        ? advice(exercise, record, Step.HOLD, last.kg(), words.tooFar(kg, max))
        : advice(exercise, record, Step.UP, kg, words.up(kg, max));
  }

  /** The last sets of the sessions since this mass was taken up. */
  private static List<Integer> lastSetsWith(double kg, List<Lifted> record) {
    List<Integer> reps = new ArrayList<>();
    for (Lifted lifted : record) {
      if (lifted.kg() == kg) {
        reps.add(lifted.lastSet());
      } else {
        reps.clear();
      }
    }
    return reps;
  }

  private List<Lifted> record(Exercise exercise) {
    List<Lifted> record = new ArrayList<>();
    for (Entry entry : entries) {
      List<Lift> lifts = entry.loads(exercise.id());
      if (!entry.date().isAfter(day) && !lifts.isEmpty()) {
        double kg = lifts.get(lifts.size() - 1).kg();
        record.add(
            new Lifted(
                entry.date(),
                kg,
                lifts.stream().filter(lift -> lift.kg() == kg).map(Lift::reps).toList()));
      }
    }
    return record;
  }

  private List<Double> masses(Exercise exercise) {
    Need need = need(exercise).orElseThrow();
    return owned.stream()
        .filter(item -> item.serves(need))
        .flatMap(item -> item.kg().stream())
        .distinct()
        .toList();
  }

  private static LoadAdvice none(Exercise exercise, List<Lifted> record, String say) {
    return new LoadAdvice(
        exercise.id(), last(record), max(record), Step.NO_ADVICE, OptionalDouble.empty(), say);
  }

  private static LoadAdvice advice(
      Exercise exercise, List<Lifted> record, Step step, double kg, String say) {
    return new LoadAdvice(
        exercise.id(), last(record), max(record), step, OptionalDouble.of(kg), say);
  }

  private static Optional<Lifted> last(List<Lifted> record) {
    return record.isEmpty() ? Optional.empty() : Optional.of(record.get(record.size() - 1));
  }

  private static Optional<OneRepMax> max(List<Lifted> record) {
    return last(record)
        .filter(lifted -> OneRepMax.covers(lifted.lastSet()))
        .map(lifted -> OneRepMax.of(lifted.kg(), lifted.lastSet()));
  }
}
