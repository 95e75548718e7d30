package counterset.score;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.model.Opposites;
import counterset.model.Problem;
import counterset.model.SupersetKind;
import counterset.model.Target;
import counterset.timeline.Kit;
import counterset.timeline.SessionLength;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Predicate;

/** A problem and its candidates, compiled for scoring. Shared by all solver threads. */
public final class SessionFacts {

  /** From this many places on a movement pattern is wanted. */
  private static final double ABOUT_ONE = 0.75;

  /** The number of wanted movement patterns from which on a request is broad. */
  private static final int BROAD = 6;

  private static final SupersetKind[] KINDS = SupersetKind.values();

  private final Problem problem;
  private final Catalogue catalogue;
  private final Kit kit;
  private final List<Opposites.Profile> profiles;
  private final List<Candidate> candidates;
  private final Map<String, Candidate> byId = new LinkedHashMap<>();
  private final boolean sharedByMuscle;
  private final int supersets;
  // The kind of each ordered pair, plus 1; 0 until asked for. Threads may race to write the same
  // value.
  private final byte[] kinds;
  private final boolean[][] canTrain;
  private final boolean[][] canFill;
  private final Map<Class<?>, Object> workedOut = new ConcurrentHashMap<>();
  private final Patterns patterns;
  private final TargetNeeds needs;
  private final boolean[] wanted;
  private final int breadth;
  private final PlaceShares shares;

  /**
   * Compiles a problem.
   *
   * @param exercises what may stand in a place
   * @param supersets the places to fill; usually as many as fit the clock
   * @throws IllegalArgumentException if the problem has more than 64 tracks
   */
  public SessionFacts(
      Problem problem, Catalogue catalogue, Collection<Exercise> exercises, int supersets) {
    if (problem.tracks().size() > Long.SIZE) {
      throw new IllegalArgumentException(
          "The tracks ("
              + problem.tracks().size()
              + ") of a session must be at most 64. Maybe join some.");
    }
    this.problem = problem;
    this.catalogue = catalogue;
    this.kit = new Kit(catalogue, exercises);
    this.patterns = new Patterns(problem, catalogue, exercises);
    this.candidates = new Candidates(problem, catalogue, kit, patterns).compile(exercises);
    this.candidates.forEach(candidate -> byId.put(candidate.exercise().id(), candidate));
    Opposites opposites = new Opposites(catalogue);
    this.profiles = candidates.stream().map(Candidate::exercise).map(opposites::profile).toList();
    this.supersets = supersets;
    this.sharedByMuscle =
        problem.targets().stream().map(Target::emphasis).distinct().count() > 1
            || !problem.targets().stream()
                .map(target -> catalogue.muscles().get(target.muscle()))
                .allMatch(patterns.wanted()::cameWithRegion);
    this.kinds = new byte[candidates.size() * candidates.size()];
    this.needs = new TargetNeeds(problem, catalogue, patterns, candidates);
    this.wanted = new boolean[patterns.count()];
    boolean[] fillable = new boolean[wanted.length];
    for (int pattern = 0; pattern < wanted.length; pattern++) {
      fillable[pattern] = canFill(pattern, c -> true);
    }
    this.shares = new PlaceShares(patterns, fillable);
    int wide = 0;
    for (int pattern = 0; pattern < wanted.length; pattern++) {
      wanted[pattern] = shares.due(pattern) * places() >= ABOUT_ONE && fillable[pattern];
      wide += wanted[pattern] ? 1 : 0;
    }
    this.breadth = wide;
    this.canFill = new boolean[problem.tracks().size()][wanted.length];
    for (int track = 0; track < canFill.length; track++) {
      for (int pattern = 0; pattern < wanted.length; pattern++) {
        int group = track;
        canFill[track][pattern] = canFill(pattern, candidate -> !candidate.isUnsuited(group));
      }
    }
    this.canTrain = new boolean[problem.tracks().size()][problem.targets().size()];
    for (int track = 0; track < canTrain.length; track++) {
      for (int target = 0; target < canTrain[track].length; target++) {
        canTrain[track][target] = isTrainedBySome(track, target);
      }
    }
  }

  private boolean canStand(Candidate candidate) {
    return candidate.usable() && (!candidate.unilateral() || perSuperset() == 2);
  }

  private boolean isTrainedBySome(int track, int target) {
    return candidates.stream()
        .anyMatch(c -> c.halfSets()[target] == 2 && c.usable() && !c.isUnsuited(track));
  }

  public Problem problem() {
    return problem;
  }

  public Catalogue catalogue() {
    return catalogue;
  }

  public Intervals clock() {
    return problem.clock();
  }

  public Kit kit() {
    return kit;
  }

  public List<Candidate> candidates() {
    return candidates;
  }

  public Optional<Candidate> candidate(String exercise) {
    return Optional.ofNullable(byId.get(exercise));
  }

  public int supersets() {
    return supersets;
  }

  public int perSuperset() {
    return problem.clock().perSuperset();
  }

  /** How many groups of followers need modifications. */
  public int tracks() {
    return canTrain.length;
  }

  /** Whether any exercise that suits a track trains a target first. */
  public boolean canTrain(int track, int target) {
    return canTrain[track][target];
  }

  /** The movement patterns of its exercises. */
  public Patterns patterns() {
    return patterns;
  }

  /** How many sets its targets need. */
  public TargetNeeds needs() {
    return needs;
  }

  /** How many places there are. */
  public int places() {
    return supersets * perSuperset();
  }

  /** The share of the places that a movement pattern may get, with what it inherits, 0 to 1. */
  public double share(int pattern) {
    return shares.of(pattern);
  }

  /** The share of the places that a movement pattern should get at least. */
  public double due(int pattern) {
    return shares.due(pattern);
  }

  /** Whether a session of this length should have a movement pattern, and can. */
  public boolean isWanted(int pattern) {
    return wanted[pattern];
  }

  /** Whether the followers of a track can do a movement pattern. */
  public boolean canFill(int track, int pattern) {
    return canFill[track][pattern];
  }

  private boolean canFill(int pattern, Predicate<Candidate> which) {
    return candidates.stream()
        .anyMatch(
            c ->
                c.merit().pattern() == pattern
                    && c.merit().fillsPattern()
                    && canStand(c)
                    && which.test(c));
  }

  /** Whether the same muscles must come again: few movement patterns are wanted, or only legs. */
  public boolean isNarrow() {
    return breadth < BROAD || patterns.isForLegs();
  }

  /**
   * Whether the sets are to be shared out by muscle group: some are asked for by name, or more than
   * others.
   */
  public boolean isSharedByMuscle() {
    return sharedByMuscle;
  }

  /** How many movement patterns are wanted. */
  public int breadth() {
    return breadth;
  }

  /** Seconds by which this many supersets are longer than the cap, at least 0. */
  public int overrunSeconds() {
    return Math.max(0, SessionLength.seconds(problem.clock(), supersets) - 60 * problem.minutes());
  }

  /**
   * Something that is worked out of these facts once and shared by all threads, such as tables.
   *
   * @param maker makes it, twice if two threads are the first to ask; what it makes must be safe to
   *     share
   */
  public <T> T workedOut(Class<T> type, Function<SessionFacts, T> maker) {
    Object known = workedOut.get(type);
    if (known == null) {
      Object made = maker.apply(this);
      Object earlier = workedOut.putIfAbsent(type, made);
      known = earlier == null ? made : earlier;
    }
    return type.cast(known);
  }

  /** What two candidates done back to back are to each other. */
  public SupersetKind kind(Candidate first, Candidate second) {
    int cell = first.index() * candidates.size() + second.index();
    if (kinds[cell] == 0) {
      kinds[cell] =
          (byte) (profiles.get(first.index()).kindWith(profiles.get(second.index())).ordinal() + 1);
    }
    return KINDS[kinds[cell] - 1];
  }
}
