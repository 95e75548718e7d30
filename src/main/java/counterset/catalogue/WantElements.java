package counterset.catalogue;

import counterset.json.Cursor;
import counterset.model.MovementPattern;
import counterset.model.Wants;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What sessions want, from elements that fit their schemas. */
final class WantElements {

  private WantElements() {}

  static MovementPattern pattern(Cursor at) {
    return new MovementPattern(
        Elements.text(at, "id"),
        Elements.text(at, "name"),
        Elements.constant(at, "group", MovementPattern.Group.class),
        at.field("big").bool().orElse(false),
        at.field("opens").bool().orElse(false),
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
}
