package counterset.ask;

/**
 * A length of time.
 *
 * @param coarse whether it was said in minutes or hours
 * @param end the place after it
 */
record Length(double seconds, boolean coarse, int end) {

  boolean isWhole() {
    return seconds == Math.rint(seconds);
  }
}
