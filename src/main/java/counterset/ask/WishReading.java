package counterset.ask;

import counterset.model.Keep;
import java.util.List;
import java.util.Set;

/**
 * What was made of some wishes.
 *
 * @param include exercises, by id
 * @param exclude exercises, families and patterns, by id
 * @param faults one line each; if there are any, nothing else counts
 */
public record WishReading(
    Set<String> include, Set<String> exclude, List<Keep> keep, List<String> faults) {

  public WishReading {
    keep = List.copyOf(keep);
    faults = List.copyOf(faults);
  }
}
