package counterset.search;

import java.util.SplittableRandom;

/**
 * Random numbers for the tries of a walk. {@link SplittableRandom} itself bounds numbers through an
 * interface, which takes several times longer than all the rest of drawing one.
 */
final class Dice {

  private final SplittableRandom random;

  Dice(long seed) {
    random = new SplittableRandom(seed);
  }

  /** A number from 0 to one less than the bound, as good as evenly spread for small bounds. */
  int nextInt(int bound) {
    return (int) ((random.nextInt() >>> 1) * (long) bound >> 31);
  }

  /** 32 random bits. */
  int bits() {
    return random.nextInt();
  }
}
