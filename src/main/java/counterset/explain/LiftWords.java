package counterset.explain;

import counterset.model.MainLift;
import counterset.model.Match;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Main lifts, as a coach calls them. */
final class LiftWords {

  private LiftWords() {}

  /** The main lift that a match is about. */
  static String of(Match match) {
    return Stream.of(MainLift.values())
        .filter(lift -> Optional.of(lift.id()).equals(match.subject()))
        .map(LiftWords::name)
        .findFirst()
        .orElse("main lift");
  }

  /** Those that matches are about; "none" for no matches. */
  static String all(List<Match> matches) {
    return matches.isEmpty() ? "none" : English.list(matches.stream().map(LiftWords::of).toList());
  }

  private static String name(MainLift lift) {
    return switch (lift) {
      case KNEE -> "squat, lunge or step-up";
      case HIP -> "hinge or bridge";
      case PUSH -> "push for the chest";
      case PULL -> "pull for the back";
    };
  }
}
