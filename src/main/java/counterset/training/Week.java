package counterset.training;

import counterset.journal.Entry;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Seven days and what was done in them.
 *
 * <p>Monotony is the mean of the seven daily loads over their standard deviation; strain is the
 * week's load times monotony (Foster C, Med Sci Sports Exerc 1998;30(7):1164-1168). Days without a
 * session count as 0. The paper does not say which standard deviation; the seven days are the whole
 * week and no sample of it, so this is the population's, which divides by 7.
 *
 * @param last the last of the seven days
 * @param entries those of these days
 */
public record Week(LocalDate last, List<Entry> entries) {

  public static final int DAYS = 7;

  /**
   * The monotony above which a week is commonly called monotonous (Foster 1998, quoted from
   * memory).
   */
  public static final double MONOTONOUS = 2.0;

  /** Picks the entries of these days. */
  public Week {
    LocalDate first = last.minusDays(DAYS - 1L);
    entries =
        entries.stream()
            .filter(entry -> !entry.date().isBefore(first) && !entry.date().isAfter(last))
            .toList();
  }

  /** The first of the seven days. */
  public LocalDate first() {
    return last.minusDays(DAYS - 1L);
  }

  /** The load of each day, the first one first. */
  public List<Double> daily() {
    double[] loads = new double[DAYS];
    for (Entry entry : entries) {
      loads[(int) ChronoUnit.DAYS.between(first(), entry.date())] += SessionLoad.of(entry);
    }
    return IntStream.range(0, DAYS).mapToObj(day -> loads[day]).toList();
  }

  /** The load of the whole week. */
  public double load() {
    return daily().stream().mapToDouble(Double::doubleValue).sum();
  }

  /** The minutes of the whole week. */
  public int minutes() {
    return entries.stream().mapToInt(Entry::minutes).sum();
  }

  /**
   * How alike the days are; empty if they are all the same, since there is no deviation to divide
   * by.
   */
  public OptionalDouble monotony() {
    double mean = load() / DAYS;
    double squares = 0;
    for (double load : daily()) {
      squares += (load - mean) * (load - mean);
    }
    double deviation = Math.sqrt(squares / DAYS);
    return isEven() ? OptionalDouble.empty() : OptionalDouble.of(mean / deviation);
  }

  /** Load times monotony; empty where monotony is. */
  public OptionalDouble strain() {
    OptionalDouble monotony = monotony();
    return monotony.isPresent()
        ? OptionalDouble.of(load() * monotony.getAsDouble())
        : OptionalDouble.empty();
  }

  private boolean isEven() {
    return daily().stream().distinct().count() == 1;
  }
}
