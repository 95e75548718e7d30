package counterset.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The best few sessions of one number of changes, and which of them were looked at already. */
final class Shortlist {

  private final int width;
  private final List<Near> sessions = new ArrayList<>();
  private final List<Boolean> looked = new ArrayList<>();

  Shortlist(int width) {
    this.width = width;
  }

  /** Whether a session of so much energy has room. */
  boolean takes(long energy) {
    return sessions.size() < width || energy > sessions.get(sessions.size() - 1).energy();
  }

  /** Adds a session in its place; of equals the earlier stays before the later. */
  void add(Near near) {
    long energy = near.energy();
    if (!takes(energy)) {
      return;
    }
    int at = sessions.size();
    while (at > 0 && sessions.get(at - 1).energy() < energy) {
      at--;
    }
    for (int equal = at - 1; equal >= 0 && sessions.get(equal).energy() == energy; equal--) {
      if (isSame(sessions.get(equal), near)) {
        return;
      }
    }
    sessions.add(at, near);
    looked.add(at, false);
    if (sessions.size() > width) {
      sessions.remove(width);
      looked.remove(width);
    }
  }

  private static boolean isSame(Near one, Near other) {
    return Arrays.equals(one.places(), other.places())
        && Arrays.equals(one.standIns(), other.standIns());
  }

  /** The best that was not looked at yet; empty if all were. */
  Optional<Near> next() {
    int at = looked.indexOf(false);
    if (at < 0) {
      return Optional.empty();
    }
    looked.set(at, true);
    return Optional.of(sessions.get(at));
  }

  Optional<Near> best() {
    return sessions.stream().findFirst();
  }
}
