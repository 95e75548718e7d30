package counterset.figure;

import counterset.figure.Shape.Look;
import counterset.model.Exercise;
import counterset.model.Figure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Draws an exercise as SVG: the start and the end of its movement side by side, or one figure that
 * moves.
 *
 * <p>The drawings have no ids and load nothing, so that any number of them fit into a page. Their
 * colours are those of {@link #styles}.
 */
public final class Drawing {

  private static final int STEPS = 6;
  private static final double SECONDS_A_POSE = 1.4;
  private static final double MARGIN = 4;
  private static final double GAP = 14;
  private static final double FLOOR_WIDTH = 1.2;

  private final Exercise exercise;
  private final Figure figure;
  private final Motion motion;
  private final Camera camera;
  private final Vec anchorage;

  /**
   * A drawing.
   *
   * @param exercise of which the figure is drawn; what it needs is put into the hands of the figure
   */
  public Drawing(Exercise exercise, Figure figure) {
    this.exercise = exercise;
    this.figure = figure;
    this.motion = new Motion(figure);
    this.camera = new Camera(figure.view());
    Vec hips = motion.keys().get(0).hips();
    this.anchorage = new Vec(hips.x(), 0, hips.z());
  }

  /**
   * The style sheet of all drawings, light and dark by the properties {@code --figure-near}, {@code
   * --figure-far}, {@code --figure-item}, {@code --figure-band}, {@code --figure-thing} and {@code
   * --figure-ground} of the page.
   */
  public static String styles() {
    return """
        .figure path{fill:none;stroke-linecap:round;stroke-linejoin:round}
        .figure .near{stroke:var(--figure-near,#27496b)}
        .figure .near.full{fill:var(--figure-near,#27496b)}
        .figure .far{stroke:var(--figure-far,#8ba3bb)}
        .figure .far.full{fill:var(--figure-far,#8ba3bb)}
        .figure .item{stroke:var(--figure-item,#b3541e)}
        .figure .band{stroke:var(--figure-band,#b3541e)}
        .figure .thing{stroke:var(--figure-thing,#7d8791)}
        .figure .thing.full{fill:var(--figure-thing,#7d8791)}
        .figure .floor{stroke:var(--figure-thing,#7d8791)}
        .figure .halo{stroke:var(--figure-ground,#fff)}
        .figure .halo.full{fill:var(--figure-ground,#fff)}
        """;
  }

  /**
   * The start and the end, for paper and for the sheet.
   *
   * @param words what is seen, for who cannot see it
   */
  public String still(String words) {
    List<Shape> start = shapes(motion.keys().get(0).body());
    List<Shape> end = shapes(motion.keys().get(1).body());
    Frame frame = Frame.around(Stream.concat(start.stream(), end.stream()).toList());
    boolean below = frame.width() > 1.25 * frame.height();
    double right = below ? 0 : frame.width() + GAP;
    double down = below ? frame.height() + GAP : 0;
    StringBuilder svg = new StringBuilder();
    svg.append("<g>").append(floor(frame)).append(strokes(List.of(start))).append("</g>");
    svg.append("<g transform=\"translate(")
        .append(SvgPath.number(right))
        .append(' ')
        .append(SvgPath.number(down))
        .append(")\">")
        .append(floor(frame))
        .append(strokes(List.of(end)))
        .append("</g>");
    Frame whole =
        new Frame(frame.left(), frame.top(), frame.right() + right, frame.bottom() + down);
    return svg(whole, words, svg);
  }

  /**
   * One figure that goes through the movement again and again.
   *
   * @param words what is seen, for who cannot see it
   */
  public String moving(String words) {
    List<List<Shape>> states =
        motion.frames(STEPS).stream().map(stance -> shapes(stance.body())).toList();
    Frame frame = Frame.around(states.stream().flatMap(List::stream).toList());
    return svg(frame, words, new StringBuilder(floor(frame)).append(strokes(states)));
  }

  private List<Shape> shapes(Body body) {
    List<Shape> shapes = new ArrayList<>();
    for (Figure.Prop prop : figure.props()) {
      shapes.addAll(ThingShapes.of(prop, motion.scene(), motion.placed(prop), body, camera));
    }
    shapes.addAll(BodyShapes.of(body, camera));
    shapes.addAll(ItemShapes.of(exercise, figure, body, camera, anchorage));
    return shapes;
  }

  private String floor(Frame frame) {
    if (figure.view() == Figure.View.ABOVE) {
      return "";
    }
    double y = FLOOR_WIDTH / 2;
    List<Dot> ends = List.of(new Dot(frame.left(), y), new Dot(frame.right(), y));
    return SvgPath.of(List.of(new Shape(Look.FLOOR, FLOOR_WIDTH, false, ends, 0)), 0);
  }

  /** What is nearer covers what is farther away, on the whole of the way. */
  private String strokes(List<List<Shape>> states) {
    int count = states.get(0).size();
    Comparator<Integer> farthestFirst =
        Comparator.comparingDouble(
            i -> states.stream().mapToDouble(state -> state.get(i).nearness()).sum());
    StringBuilder strokes = new StringBuilder();
    IntStream.range(0, count)
        .boxed()
        .sorted(farthestFirst)
        .forEach(
            i ->
                strokes.append(
                    SvgPath.of(
                        states.stream().map(state -> state.get(i)).toList(),
                        SECONDS_A_POSE * motion.keys().size())));
    return strokes.toString();
  }

  private static String svg(Frame frame, String words, StringBuilder inside) {
    Frame grown = frame.grown(MARGIN);
    return "<svg class=\"figure\" xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\""
        + escaped(words)
        + "\" viewBox=\""
        + SvgPath.number(grown.left())
        + " "
        + SvgPath.number(grown.top())
        + " "
        + SvgPath.number(grown.width())
        + " "
        + SvgPath.number(grown.height())
        + "\">"
        + inside
        + "</svg>";
  }

  private static String escaped(String words) {
    return words
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
