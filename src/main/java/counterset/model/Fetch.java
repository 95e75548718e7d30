package counterset.model;

import java.util.List;

/**
 * Something to fetch before the session.
 *
 * @param item what, how many and how heavy
 * @param supersets the numbers of the supersets that use it; never empty
 * @param atStart whether the first exercise needs it, so that it is in hand or on before the clock
 *     starts
 */
public record Fetch(Item item, List<Integer> supersets, boolean atStart) {

  public Fetch {
    supersets = List.copyOf(supersets);
  }
}
