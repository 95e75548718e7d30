package counterset.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What each copy chooses is the best of all that it could, tried one by one. */
class TermsTest {

  private static final int SCALE = 256;
  private static final int TRIALS = 200;

  /** By one-sided supersets of 8, how many are missing to 2 or beyond 4. */
  private static final int[] AWAY = {2, 1, 0, 0, 0, 1, 2, 3, 4};

  private static final Counts NOTHING = Counts.one(List.of(), 1, candidate -> 0);

  @Test
  void volumeChoosesItsBestSetsWithAllRounding() {
    Random random = new Random(2);
    for (int trial = 0; trial < TRIALS; trial++) {
      int[] emphasis = {1 + random.nextInt(3), 1 + random.nextInt(3)};
      int rounds = 1 + random.nextInt(2);
      int weight = (1 + random.nextInt(4)) * SCALE;
      int[] y = new int[3];
      for (int i = 0; i < y.length; i++) {
        y[i] = random.nextInt(20 * SCALE) - 10 * SCALE;
      }
      long best = Long.MIN_VALUE;
      for (int all = 0; all <= 12; all++) {
        long sum = -(long) y[2] * all;
        for (int target = 0; target < 2; target++) {
          sum += bestOfTarget(all, target, emphasis, rounds, weight, y[target]);
        }
        best = Math.max(best, sum);
      }
      Volume term = new Volume(NOTHING, emphasis, units(emphasis, rounds), weight, 8, 12);
      assertThat(term.copy(y, 0, new double[3])).as("trial %d", trial).isEqualTo(best);
    }
  }

  private static long bestOfTarget(
      int all, int target, int[] emphasis, int rounds, int weight, int price) {
    long best = Long.MIN_VALUE;
    int sum = emphasis[0] + emphasis[1];
    for (int own = 0; own <= Math.min(8, all); own++) {
      int away = squared(own * rounds, all * rounds, emphasis[target], sum);
      best = Math.max(best, -(long) price * own - (long) weight * away);
    }
    return best;
  }

  private static Volume.Units units(int[] emphasis, int rounds) {
    int sum = emphasis[0] + emphasis[1];
    return (target, own, all) -> squared(own * rounds, all * rounds, emphasis[target], sum);
  }

  /** The distance from a share in sets, squared, to the nearest whole number. */
  private static int squared(int halfSets, int all, int emphasis, int sum) {
    double sets = halfSets / 2.0 - (double) emphasis * all / 2 / sum;
    return (int) Math.round(sets * sets);
  }

  /** A third of a set away rounds to nothing, seven tenths do not: half sets 1 and 2 of 2 and 1. */
  @Test
  void aDistanceBelowTheHalfCostsNothing() {
    int[] even = {1, 1};
    Volume term = new Volume(NOTHING, even, units(even, 1), SCALE, 8, 3);
    int[] none = new int[3];
    assertThat(term.copy(none, 0, new double[3])).isZero();
    int[] forTheFirst = {-5 * SCALE, 0, 0};
    // 3 half sets of 3, 0.75 sets away each: 0.5625 rounds to 1, twice.
    assertThat(term.copy(forTheFirst, 0, new double[3])).isEqualTo((15 - 1) * SCALE);
  }

  @Test
  void oneSidedSupersetsChooseTheirBestNumber() {
    for (int price = -6; price <= 6; price++) {
      Handful term = new Handful(6, AWAY, SCALE);
      long best = Long.MIN_VALUE;
      for (int count = 0; count <= 8; count++) {
        long worth = -price * count - 6L * AWAY[count];
        best = Math.max(best, worth * SCALE);
      }
      assertThat(term.copy(new int[] {price * SCALE}, 0, new double[1])).isEqualTo(best);
    }
  }

  @Test
  void aBudgetLetsTheDearestWishGo() {
    Counts two = Counts.several(List.of(), 2, (candidate, wish) -> 0);
    int[] prices = {3 * SCALE, 8 * SCALE};
    int[] wanted = {2, 1};
    int[] weight = {1, 2};
    // All wishes cost 3 * 2 + 8 * 1; a point of the budget buys back as much as the dearest is
    // worth.
    assertThat(new Wishes(two, wanted, weight, 0, 0).copy(prices, 0, new double[2]))
        .isEqualTo(-14 * SCALE);
    assertThat(new Wishes(two, wanted, weight, 2, 0).copy(prices, 0, new double[2]))
        .isEqualTo((-14 + 2 * 4) * SCALE);
    // One point is too few for the second wish, so the first one sets the price.
    assertThat(new Wishes(two, wanted, weight, 1, 0).copy(prices, 0, new double[2]))
        .isEqualTo((-14 + 3) * SCALE);
  }
}
