package counterset.planning.scoring;

import counterset.planning.Candidate;
import counterset.planning.Place;
import counterset.planning.SessionSolution;
import counterset.planning.StandIn;
import counterset.planning.constraints.SessionConstraint;
import java.util.ArrayList;
import java.util.List;

/** Writes down every match of a solution, so that each point can be traced to its places. */
public final class Ledger implements ScoreSink {

  private final List<Entry> entries = new ArrayList<>();

  private Ledger() {}

  /** All matches of a solution, in a fixed order. */
  public static List<Entry> of(SessionSolution solution) {
    Ledger ledger = new Ledger();
    Candidate[] places =
        solution.getPlaces().stream().map(Place::getCandidate).toArray(Candidate[]::new);
    new StraightLine(solution.getFacts()).score(places, ledger);
    Candidate[] standIns =
        solution.getStandIns().stream().map(StandIn::getCandidate).toArray(Candidate[]::new);
    new StraightTracks(solution.getFacts()).score(places, standIns, ledger);
    return List.copyOf(ledger.entries);
  }

  @Override
  public void match(
      SessionConstraint constraint, int amount, int first, int second, int detail, int track) {
    entries.add(new Entry(constraint, amount, first, second, detail, track));
  }

  /**
   * A match.
   *
   * @param amount units of the constraint's weight, at least 1
   * @param first the index of its place, or -1
   * @param second the index of its other place, or -1
   * @param detail the index of the target, owned item, wish or keep of the problem or of the main
   *     lift that it is about, or of the candidate that is a modification, or -1
   * @param track the track whose followers it concerns, or -1 for the session itself
   */
  public record Entry(
      SessionConstraint constraint, int amount, int first, int second, int detail, int track) {}
}
