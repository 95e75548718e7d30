package counterset.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Writes down every match of a session, so that each point can be traced to its places. */
public final class Ledger {

  private static final Comparator<Entry> BY_CONSTRAINT =
      Comparator.comparingInt(entry -> Constraints.OF_SESSIONS.indexOf(entry.constraint()));

  private Ledger() {}

  /** All matches of a session, in the order of the constraints. */
  public static List<Entry> of(Lineup lineup) {
    SessionFacts facts = lineup.facts();
    List<Entry> entries = new ArrayList<>();
    Sink sink =
        (rule, amount, first, second, subject, track) ->
            entries.add(
                new Entry(
                    rule.constraint(),
                    amount,
                    amount * rule.perUnit(),
                    first,
                    second,
                    Optional.ofNullable(subject),
                    track));
    SessionWalk.walk(facts, lineup.places(), sink);
    new TrackWalk(facts).walk(lineup.places(), lineup.standIns(), sink);
    entries.sort(BY_CONSTRAINT);
    return List.copyOf(entries);
  }

  /**
   * A match.
   *
   * @param amount units of the constraint, at least 1
   * @param points what it adds to the score of its level
   * @param first the index of its place, or -1
   * @param second the index of its other place, or -1
   * @param subject the id of what it is about, where no place tells
   * @param track the track whose followers it concerns, or -1 for the session itself
   */
  public record Entry(
      Constraint constraint,
      int amount,
      int points,
      int first,
      int second,
      Optional<String> subject,
      int track) {}
}
