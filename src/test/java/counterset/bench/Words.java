package counterset.bench;

import java.util.Locale;

/** Numbers as the report prints them. */
final class Words {

  private static final double DETAILED = 10;

  private Words() {}

  /** Two decimals below 10, none above. */
  static String number(double value) {
    if (Double.isInfinite(value)) {
      return "never";
    }
    return String.format(Locale.ROOT, Math.abs(value) < DETAILED ? "%.2f" : "%.0f", value);
  }

  /** Such as {@code 1/45}; a share of 1 or more as a multiple. */
  static String share(double share) {
    return share < 1
        ? String.format(Locale.ROOT, "1/%.0f", 1 / share)
        : String.format(Locale.ROOT, "%.1f times", share);
  }
}
