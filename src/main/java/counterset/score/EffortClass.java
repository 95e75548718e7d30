package counterset.score;

/** How hard an exercise is for a client in the interval of work. */
public enum EffortClass {
  EASY,
  WORKING,
  HARD
}
