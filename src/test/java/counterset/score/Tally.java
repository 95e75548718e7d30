package counterset.score;

/**
 * What the matches of one constraint come to.
 *
 * @param matches how many there are, at least 1
 * @param amount the units of the constraint's weight, summed
 * @param points what they earn, below 0 if they cost; 0 if the weight is 0
 */
record Tally(int matches, int amount, int points) {

  Tally plus(Tally other) {
    return new Tally(matches + other.matches, amount + other.amount, points + other.points);
  }
}
