package counterset.model;

import java.time.LocalDate;
import java.util.List;

/**
 * What was done on an earlier date: the ids of its exercises. In files a list of these is {@code
 * recent}.
 */
public record Done(LocalDate date, List<String> exercises) {

  public Done {
    exercises = List.copyOf(exercises);
  }
}
