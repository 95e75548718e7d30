package counterset.score;

/** What tires besides the muscles that an exercise is done for. */
enum Fatigue {
  GRIP,
  BACK,
  SHOULDER;

  int bit() {
    return 1 << ordinal();
  }
}
