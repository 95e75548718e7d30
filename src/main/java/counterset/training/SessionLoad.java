package counterset.training;

import counterset.journal.Entry;

/**
 * Session load by session RPE: the rating of the whole session on Foster's CR-10 scale times its
 * minutes, warm-up and rests included (Foster C et al., J Strength Cond Res 2001;15(1):109-115).
 */
public final class SessionLoad {

  private SessionLoad() {}

  /** The load in arbitrary units, 0 to 10 times the minutes. */
  public static double of(Entry entry) {
    return entry.rpe() * entry.minutes();
  }
}
