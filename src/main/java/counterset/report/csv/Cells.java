package counterset.report.csv;

/** Texts that a spreadsheet shows and does not compute. */
final class Cells {

  private static final String STARTS_A_FORMULA = "=+-@\t\r\n";

  private Cells() {}

  /**
   * A text with an apostrophe before it where a spreadsheet would take it for a formula (OWASP,
   * "CSV Injection").
   */
  static String safe(String text) {
    return !text.isEmpty() && STARTS_A_FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
