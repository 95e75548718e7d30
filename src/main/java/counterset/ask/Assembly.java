package counterset.ask;

import counterset.model.Catalogue;
import counterset.model.Intervals;
import counterset.model.Owned;
import counterset.model.Pairing;
import counterset.model.Problem;
import counterset.model.Target;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Makes a complete problem of a draft: what the ask is silent about gets its default. */
final class Assembly {

  static final long DEFAULT_SEED = 1;

  private static final int EMPHASIS = 2;

  private final AskDraft draft;
  private final int minutes;
  private final List<Target> targets;
  private final List<Owned> equipment;

  /** Reports to the draft what only shows when all is put together. */
  Assembly(Catalogue catalogue, AskDraft draft) {
    this.draft = draft;
    this.minutes = draft.minutes.or(Problem.DEFAULT_MINUTES);
    this.equipment = OwnedList.of(catalogue, draft);
    Set<String> ids =
        new LinkedHashSet<>(
            draft.targets.isEmpty()
                ? MuscleNames.defaults(catalogue, OwnWords.WHOLE)
                : draft.targets);
    ids.addAll(draft.emphasis);
    ids.addAll(draft.minSets.keySet());
    ids.removeAll(draft.removed.keySet());
    this.targets = ids.stream().map(this::target).toList();
    Span span =
        draft.removed.isEmpty() ? new Span("", 1) : draft.removed.values().iterator().next();
    if (targets.isEmpty()
        && draft.faults().stream().noneMatch(fault -> fault.column() == span.column())) {
      draft.fault(
          span, "No target is left. Name a muscle group or region that the session trains.");
    }
  }

  private Target target(String id) {
    Slot<Integer> sets = draft.minSets.get(id);
    return new Target(
        id, draft.emphasis.contains(id) ? EMPHASIS : 1, sets == null ? 1 : sets.or(1));
  }

  int minutes() {
    return minutes;
  }

  List<Target> targets() {
    return targets;
  }

  List<Owned> equipment() {
    return equipment;
  }

  Intervals clock() {
    Intervals express = Intervals.EXPRESS;
    return new Intervals(
        seconds(ClockPart.GET_READY, express.getReady()),
        seconds(ClockPart.WARM_UP, warmUp(minutes)),
        seconds(ClockPart.WORK, express.work()),
        seconds(ClockPart.SWITCH, express.between()),
        seconds(ClockPart.REST, express.rest()),
        seconds(ClockPart.COOL_DOWN, express.coolDown()),
        draft.perSuperset.or(express.perSuperset()),
        draft.rounds.or(express.rounds()));
  }

  /** A short session has a shorter warm-up (common practice, no source). */
  static int warmUp(int minutes) {
    return minutes <= 8 ? 60 : minutes <= 12 ? 90 : Intervals.EXPRESS.warmUp();
  }

  private int seconds(ClockPart part, int standard) {
    return draft.clock.get(part).or(standard);
  }

  Pairing pairing() {
    return draft.pairing.or(Pairing.OPPOSING);
  }

  Problem problem(String ask) {
    return Problem.builder()
        .title(title(ask))
        .minutes(minutes)
        .clock(clock())
        .targets(targets)
        .equipment(equipment)
        .limitations(draft.limitations.keySet())
        .tracks(draft.tracks.stream().map(AskDraft.TrackNamed::ids).toList())
        .level(draft.level.or(Problem.DEFAULT_LEVEL))
        .pairing(pairing())
        .include(draft.include.keySet())
        .exclude(draft.exclude.keySet())
        .keep(draft.kept.stream().map(AskDraft.Kept::keep).distinct().toList())
        .likes(draft.likes.keySet())
        .dislikes(draft.dislikes.keySet())
        .seed(draft.seed.or(DEFAULT_SEED))
        .build();
  }

  /** The ask itself, with single spaces. */
  static String title(String ask) {
    StringBuilder title = new StringBuilder();
    for (int i = 0; i < ask.length(); i++) {
      char c = ask.charAt(i);
      boolean space = Character.isSpaceChar(c) || Character.isWhitespace(c);
      if (!space) {
        title.append(c);
      } else if (!title.isEmpty() && title.charAt(title.length() - 1) != ' ') {
        title.append(' ');
      }
    }
    return title.toString().strip();
  }
}
