package counterset.model;

import java.util.List;
import java.util.Optional;

/**
 * A drawn figure that moves: what is seen of an exercise, or of several that look alike.
 *
 * @param id in lower-kebab-case
 * @param props what stands around, in the order in which it is drawn
 * @param load the point of the body at which a dumbbell or kettlebell is drawn, if the exercise
 *     needs one; empty for every hand that the count of the exercise fills
 * @param loop the pair of points that a loop band is drawn around, if the exercise needs one
 * @param band the points that a long band runs through, if the exercise needs one; empty if it is
 *     not drawn
 * @param poses two or more, gone through in turn and then again from the first; the first is the
 *     start and the second the end of the movement
 */
public record Figure(
    String id,
    View view,
    List<Prop> props,
    Optional<String> load,
    Optional<String> loop,
    List<List<String>> bands,
    List<Pose> poses) {

  public Figure {
    props = List.copyOf(props);
    bands = bands.stream().map(List::copyOf).toList();
    poses = List.copyOf(poses);
    if (poses.size() < 2) {
      throw new IllegalArgumentException("The figure (" + id + ") needs two poses or more.");
    }
  }

  /** Where it is seen from. */
  public enum View implements Identified {
    /** From its right side: it looks to the right of the picture. */
    SIDE("side"),
    /** From before it. */
    FRONT("front"),
    /** From behind it. */
    BACK("back"),
    /** From above, its head at the right of the picture when it lies face down. */
    ABOVE("above");

    private final String id;

    View(String id) {
      this.id = id;
    }

    @Override
    public String id() {
      return id;
    }
  }

  /** A thing of which the figure makes use. */
  public enum Thing implements Identified {
    CHAIR("chair"),
    STEP("step"),
    BENCH("bench"),
    BALL("ball"),
    WALL("wall"),
    BAR("bar"),
    SLIDER("slider"),
    DUMBBELL("dumbbell");

    private final String id;

    Thing(String id) {
      this.id = id;
    }

    @Override
    public String id() {
      return id;
    }
  }

  /** Where a thing is, seen from the figure in its first pose. */
  public enum Where implements Identified {
    AHEAD("ahead"),
    BEHIND("behind"),
    RIGHT("right"),
    LEFT("left");

    private final String id;

    Where(String id) {
      this.id = id;
    }

    @Override
    public String id() {
      return id;
    }
  }

  /**
   * A thing that carries points of the body, or that they touch.
   *
   * @param at the points that it carries; they decide where it stands
   * @param where of a wall, on which side of the figure it is; of a chair, on which side of its
   *     seat the backrest is
   * @param height of a step, in metres; of a chair, 0.45 for the seat and 0.85 for the top of the
   *     backrest
   */
  public record Prop(Thing thing, List<String> at, Where where, double height) {

    public Prop {
      at = List.copyOf(at);
    }
  }
}
