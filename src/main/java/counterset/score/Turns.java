package counterset.score;

/** What the followers of a track do place by place, read off arrays of candidates by place. */
public final class Turns {

  private Turns() {}

  /**
   * The place whose stand-in counts at a place: the first of its superset for the second side of a
   * one-sided exercise, else the place itself.
   */
  public static int firstSide(Candidate[] places, int first, int place) {
    if (places[place].unilateral()) {
      for (int earlier = first; earlier < place; earlier++) {
        if (places[earlier] == places[place]) {
          return earlier;
        }
      }
    }
    return place;
  }

  /**
   * Fills in what the followers of a track do, null where there is nothing or nothing that suits
   * them.
   *
   * @param standIns of all tracks
   * @param effective to be filled, by place
   */
  public static void effective(
      Candidate[] places, Candidate[] standIns, int track, int perSuperset, Candidate[] effective) {
    int offset = track * places.length;
    for (int place = 0; place < places.length; place++) {
      Candidate main = places[place];
      if (main == null || !main.isUnsuited(track)) {
        effective[place] = main;
      } else {
        int first = firstSide(places, place - place % perSuperset, place);
        Candidate standIn = standIns[offset + first];
        effective[place] = standIn != null && standIn.standsInFor(main, track) ? standIn : null;
      }
    }
  }
}
