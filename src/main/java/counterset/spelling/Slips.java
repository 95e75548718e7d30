package counterset.spelling;

/**
 * Typing slips: a letter added, dropped, changed, or swapped with its neighbour.
 *
 * <p>Counted as optimal string alignment. The library that counts so (Commons Text 1.15) compares
 * letters beyond ASCII by identity and finds that a word with an umlaut differs from itself.
 */
public final class Slips {

  private Slips() {}

  /** Whether one word may be the other with slips: none in three letters, one in four to seven. */
  public static boolean only(String a, String b) {
    int allowed = allowed(a, b);
    return allowed == 0
        ? a.equals(b)
        : Math.abs(a.length() - b.length()) <= allowed && between(a, b) <= allowed;
  }

  /** How many slips two words may be apart and still be meant for one; 0 to 3. */
  public static int allowed(String a, String b) {
    int longer = Math.max(a.length(), b.length());
    return Math.min(a.length(), b.length()) < 4 ? 0 : longer < 8 ? 1 : longer < 12 ? 2 : 3;
  }

  /** The fewest slips that turn one text into the other. */
  public static int between(String a, String b) {
    int[] before = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        row[j] = Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + change);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          row[j] = Math.min(row[j], before[j - 2] + 1);
        }
      }
      int[] spare = before;
      before = last;
      last = row;
      row = spare;
    }
    return last[b.length()];
  }
}
