package counterset.catalogue;

import counterset.json.Cursor;
import counterset.model.MovementPattern;
import counterset.model.Region;
import counterset.model.Wants;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What sessions want, from elements that fit their schemas. */
final class WantElements {

  private WantElements() {}

  static MovementPattern pattern(Cursor at) {
    return new MovementPattern(
        Elements.text(at, "id"),
        Elements.text(at, "name"),
        Elements.constant(at, "group", MovementPattern.Group.class),
        at.field("big").bool().orElse(false),
        Elements.set(at, "patterns"),
        Elements.set(at, "families"),
        Elements.set(at, "pairs"));
  }

  static PatternShares shares(Cursor at) {
    Map<String, Integer> shares = new LinkedHashMap<>();
    at.field("shares")
        .entries()
        .forEach((id, value) -> value.integer().ifPresent(share -> shares.put(id, share)));
    return new PatternShares(Elements.text(at, "id"), shares);
  }

  /** The wants of a base, unless some files say others. */
  static Wants joined(
      Wants base,
      Optional<Sheet<MovementPattern>> patterns,
      Optional<Sheet<PatternShares>> regions) {
    Map<String, Map<String, Integer>> shares = new LinkedHashMap<>(base.shares());
    regions.ifPresent(
        sheet -> sheet.values().forEach(region -> shares.put(region.id(), region.shares())));
    List<MovementPattern> all = new ArrayList<>();
    patterns.ifPresent(sheet -> all.addAll(sheet.values()));
    all.addAll(base.patterns());
    return new Wants(all, shares);
  }

  /** Checks that all that is named is there. */
  static void check(Sheets sheets, Wants base, Set<String> muscles) {
    Set<String> patterns =
        Sheets.ids(
            base.patterns().stream().map(MovementPattern::id).toList(),
            sheets.patterns().stream().toList());
    sheets
        .patterns()
        .ifPresent(
            sheet ->
                sheet
                    .entries()
                    .forEach(
                        entry -> Integrity.known(entry, "pairs", "movement pattern", patterns)));
    Set<String> regions = new LinkedHashSet<>(muscles);
    Arrays.stream(Region.values()).forEach(region -> regions.add(region.id()));
    regions.add(Wants.WHOLE);
    sheets
        .regions()
        .ifPresent(
            sheet ->
                sheet
                    .entries()
                    .forEach(
                        entry -> {
                          entry.at("id").id("region or muscle", regions);
                          shares(entry, patterns);
                        }));
  }

  private static void shares(Entry<PatternShares> entry, Set<String> patterns) {
    entry
        .at("shares")
        .entries()
        .forEach(
            (id, value) -> {
              if (!patterns.contains(id)) {
                value.fault("The movement pattern (" + id + ") is not in patterns.json.");
              }
            });
  }
}
