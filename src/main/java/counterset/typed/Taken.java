package counterset.typed;

/**
 * What a line, or a part of it, was taken for.
 *
 * @param line from 1
 * @param column from 1
 * @param typed as it was typed
 * @param place where it stands in the session, such as 3A or warm-up; empty text for what stands
 *     nowhere
 * @param as what it was taken for, in words
 * @param exercise the id of the exercise; empty text if it is none
 */
public record Taken(int line, int column, String typed, String place, String as, String exercise) {

  /** {@code line 4, 2A: "goblet sqats" taken for Goblet squat (goblet-squat)}. */
  public String sentence() {
    String where = "line " + line + (place.isEmpty() ? "" : ", " + place);
    String id = exercise.isEmpty() ? "" : " (" + exercise + ")";
    return where + ": \"" + typed + "\" taken for " + as + id;
  }
}
