package counterset.journal;

import java.util.Comparator;
import java.util.List;

/**
 * What a journal holds.
 *
 * @param entries by date; those of one day in the order of the file
 * @param leftOut the numbers of the lines that were cut short or marked to be left out, from 1
 */
public record Reading(List<Entry> entries, List<Integer> leftOut) {

  public Reading {
    entries = entries.stream().sorted(Comparator.comparing(Entry::date)).toList();
    leftOut = List.copyOf(leftOut);
  }
}
