package counterset.score;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.fixture.FilledWeek;
import counterset.fixture.WeekBuilder;

/** Holds one constraint to an amount, in units of its weight, for a week. */
final class WeekCheck {

  private WeekCheck() {}

  static void costs(Class<? extends DayConstraint> constraint, int amount, WeekBuilder builder) {
    FilledWeek week = builder.filled();
    int ledger =
        WeekLedger.of(week.facts(), week.places()).stream()
            .filter(entry -> constraint.isInstance(entry.constraint()))
            .mapToInt(WeekLedger.Entry::amount)
            .sum();
    assertThat(ledger).as("ledger").isEqualTo(amount);
  }

  static void silent(Class<? extends DayConstraint> constraint, WeekBuilder week) {
    costs(constraint, 0, week);
  }
}
