package counterset.search;

import counterset.model.Intervals;
import counterset.model.Keep;
import counterset.model.Owned;
import counterset.model.Problem;
import counterset.model.Target;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** A problem while it is being changed. */
final class ProblemDraft {

  private final Problem original;
  int minutes;
  Intervals clock;
  int level;
  final List<Target> targets;
  final List<Owned> equipment;
  final Set<String> limitations;
  final List<Set<String>> tracks;
  final Set<String> include;
  final Set<String> exclude;
  final List<Keep> keep;
  final Set<String> likes;

  ProblemDraft(Problem original) {
    this.original = original;
    this.minutes = original.minutes();
    this.clock = original.clock();
    this.level = original.level();
    this.targets = new ArrayList<>(original.targets());
    this.equipment = new ArrayList<>(original.equipment());
    this.limitations = new LinkedHashSet<>(original.limitations());
    this.tracks = new ArrayList<>(original.tracks());
    this.include = new LinkedHashSet<>(original.include());
    this.exclude = new LinkedHashSet<>(original.exclude());
    this.keep = new ArrayList<>(original.keep());
    this.likes = new LinkedHashSet<>(original.likes());
  }

  Problem problem() {
    return original.toBuilder()
        .minutes(minutes)
        .clock(clock)
        .targets(targets)
        .equipment(equipment)
        .limitations(limitations)
        .tracks(tracks)
        .level(level)
        .include(include)
        .exclude(exclude)
        .keep(keep)
        .likes(likes)
        .build();
  }
}
