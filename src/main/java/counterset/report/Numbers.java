package counterset.report;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as pages show them. */
public final class Numbers {

  private Numbers() {}

  /** Rounded to so many decimals, half up, without zeros at the end. */
  public static String rounded(double number, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** Rounded to so many decimals, half up, all of them shown. */
  public static String fixed(double number, int decimals) {
    return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }
}
