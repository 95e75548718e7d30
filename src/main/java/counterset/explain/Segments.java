package counterset.explain;

import counterset.model.Muscle;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the part of the body that two muscle groups lie on either side of, by the words of the
 * catalogue.
 */
final class Segments {

  private static final Pattern FRONT_OR_BACK = Pattern.compile("(front|back) of the (.+)");
  private static final Pattern OUTER_OR_INNER = Pattern.compile("(outer|inner) (.+)");

  private Segments() {}

  /** {@code front and back of the upper arm}, if that is what they are. */
  static Optional<String> both(Muscle one, Muscle other) {
    return both(one, other, FRONT_OR_BACK, " of the ")
        .or(() -> both(one, other, OUTER_OR_INNER, " "));
  }

  private static Optional<String> both(Muscle one, Muscle other, Pattern pattern, String link) {
    for (String name : one.names()) {
      Matcher here = pattern.matcher(name);
      for (String otherName : other.names()) {
        Matcher there = pattern.matcher(otherName);
        if (here.matches() && there.matches() && here.group(2).equals(there.group(2))) {
          return Optional.of(here.group(1) + " and " + there.group(1) + link + here.group(2));
        }
      }
    }
    return Optional.empty();
  }
}
