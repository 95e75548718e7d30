package counterset.catalogue;

import counterset.json.Cursor;
import counterset.model.MovementPattern;
import counterset.model.Region;
import counterset.model.Wants;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

/** What movement patterns and regions must agree with: each other, and the muscle groups. */
final class WantRules {

  private WantRules() {}

  /**
   * Checks that all that is named is there.
   *
   * @param known the ids of all movement patterns, also of faulty ones
   */
  static void check(
      Optional<Sheet<MovementPattern>> patterns,
      Optional<Sheet<PatternShares>> regions,
      Set<String> known,
      Set<String> muscles) {
    patterns.ifPresent(
        sheet ->
            sheet.entries().stream()
                .flatMap(entry -> entry.at("pairs").elements().stream())
                .forEach(pair -> pair.id("movement pattern", known)));
    Set<String> ids = new LinkedHashSet<>(muscles);
    Arrays.stream(Region.values()).forEach(region -> ids.add(region.id()));
    ids.add(Wants.WHOLE);
    regions.ifPresent(
        sheet ->
            sheet
                .entries()
                .forEach(
                    entry -> {
                      entry.at("id").id("region or muscle", ids);
                      entry.at("shares").entries().forEach((id, value) -> share(id, value, known));
                    }));
  }

  private static void share(String id, Cursor value, Set<String> known) {
    if (!known.contains(id)) {
      value.fault("The movement pattern (" + id + ") is not in patterns.json.");
    }
  }
}
