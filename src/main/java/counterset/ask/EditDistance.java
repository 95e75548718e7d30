package counterset.ask;

/**
 * How many letters must be added, dropped, changed or swapped with their neighbour to make one text
 * another.
 */
public final class EditDistance {

  private EditDistance() {}

  /** The distance, or anything above the given most if it is more. */
  public static int between(String a, String b, int most) {
    if (Math.abs(a.length() - b.length()) > most) {
      return Integer.MAX_VALUE;
    }
    int[] before = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] now = new int[b.length() + 1];
      now[0] = i;
      int least = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        now[j] = Math.min(Math.min(now[j - 1], last[j]) + 1, last[j - 1] + change);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          now[j] = Math.min(now[j], before[j - 2] + 1);
        }
        least = Math.min(least, now[j]);
      }
      if (least > most) {
        return Integer.MAX_VALUE;
      }
      before = last;
      last = now;
    }
    return last[b.length()];
  }
}
