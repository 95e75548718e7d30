package counterset.figure;

import java.util.List;

/** Strokes as SVG paths. */
final class SvgPath {

  private static final double HALO = 3;

  private SvgPath() {}

  /** A number with at most one digit after the point. */
  static String number(double value) {
    long tenths = StrictMath.round(value * 10);
    String digits = Long.toString(StrictMath.abs(tenths));
    String whole = digits.length() == 1 ? "0" : digits.substring(0, digits.length() - 1);
    String rest = digits.substring(digits.length() - 1);
    return (tenths < 0 ? "-" : "") + whole + (rest.equals("0") ? "" : "." + rest);
  }

  /** The drawing instructions of a stroke. */
  static String data(Shape shape) {
    StringBuilder data = new StringBuilder();
    List<Dot> dots = shape.dots();
    for (int i = 0; i < dots.size(); i++) {
      data.append(i == 0 ? "M" : "L")
          .append(number(dots.get(i).x()))
          .append(' ')
          .append(number(dots.get(i).y()));
    }
    return data.append(shape.closed() ? "Z" : "").toString();
  }

  /**
   * A stroke that goes through several states.
   *
   * @param states the same stroke again and again; one if it does not move
   * @param seconds how long it takes to go through them
   */
  static String of(List<Shape> states, double seconds) {
    Shape first = states.get(0);
    String motion = motion(states, seconds);
    String halo = first.look().isSetOff() ? path(first, "halo", first.width() + HALO, motion) : "";
    return halo + path(first, first.look().id(), first.width(), motion);
  }

  private static String path(Shape shape, String look, double width, String motion) {
    return "<path class=\""
        + look
        + (shape.closed() ? " full" : "")
        + "\" stroke-width=\""
        + number(width)
        + "\" d=\""
        + data(shape)
        + (motion.isEmpty() ? "\"/>" : "\">" + motion + "</path>");
  }

  private static String motion(List<Shape> states, double seconds) {
    List<String> values = states.stream().map(SvgPath::data).toList();
    if (values.stream().distinct().count() == 1) {
      return "";
    }
    return "<animate attributeName=\"d\" repeatCount=\"indefinite\" dur=\""
        + number(seconds)
        + "s\" values=\""
        + String.join(";", values)
        + "\"/>";
  }
}
