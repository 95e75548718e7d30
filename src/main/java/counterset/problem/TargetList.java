package counterset.problem;

import counterset.json.Cursor;
import counterset.model.Catalogue;
import counterset.model.Identified;
import counterset.model.Muscle;
import counterset.model.Region;
import counterset.model.Target;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Spells out targets: a region stands for its default targets, and of several entries that mean one
 * muscle group the most explicit one wins (the muscle group itself, its region, the whole body).
 */
final class TargetList {

  /** The word for all regions. */
  static final String WHOLE = "whole";

  private record Ranked(Target target, int rank) {}

  private final Catalogue catalogue;
  private final Map<String, Ranked> ranked = new LinkedHashMap<>();
  private final Set<String> named = new HashSet<>();

  private TargetList(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  static TargetList read(Cursor list, Catalogue catalogue) {
    TargetList targets = new TargetList(catalogue);
    for (Cursor entry : list.elements()) {
      targets.add(entry, entry.isText() ? entry : entry.field("muscle"));
    }
    return targets;
  }

  List<Target> targets() {
    return ranked.values().stream().map(Ranked::target).toList();
  }

  private void add(Cursor entry, Cursor name) {
    List<String> known = new ArrayList<>(catalogue.muscles().keySet());
    Arrays.stream(Region.values()).map(Region::id).forEach(known::add);
    known.add(WHOLE);
    Optional<String> id = name.id("muscle", known);
    if (id.isEmpty()) {
      return;
    }
    if (!named.add(id.get())) {
      name.fault("The target (" + id.get() + ") is named twice; keep one.");
      return;
    }
    int emphasis = Math.max(1, entry.field("emphasis").integer().orElse(1));
    int minSets = Math.max(0, entry.field("minSets").integer().orElse(1));
    List<String> muscles = muscles(id.get());
    if (muscles.isEmpty()) {
      name.fault("The region (" + id.get() + ") has no muscle groups in this catalogue.");
    }
    muscles.forEach(
        muscle -> put(new Ranked(new Target(muscle, emphasis, minSets), rank(id.get()))));
  }

  private void put(Ranked entry) {
    ranked.merge(
        entry.target().muscle(), entry, (old, added) -> added.rank() > old.rank() ? added : old);
  }

  private int rank(String id) {
    if (catalogue.muscles().containsKey(id)) {
      return 2;
    }
    return id.equals(WHOLE) ? 0 : 1;
  }

  private List<String> muscles(String id) {
    if (catalogue.muscles().containsKey(id)) {
      return List.of(id);
    }
    Optional<Region> region = Identified.find(Region.class, id);
    return catalogue.muscles().values().stream()
        .filter(Muscle::defaultTarget)
        .filter(muscle -> region.isEmpty() || muscle.region() == region.get())
        .map(Muscle::id)
        .toList();
  }
}
