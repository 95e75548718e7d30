package counterset.figure;

import java.util.List;

/** The smallest upright rectangle around some strokes, in hundredths of a metre. */
record Frame(double left, double top, double right, double bottom) {

  /** Around all strokes, their widths included. */
  static Frame around(List<Shape> shapes) {
    double left = Double.POSITIVE_INFINITY;
    double top = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double bottom = Double.NEGATIVE_INFINITY;
    for (Shape shape : shapes) {
      for (Dot dot : shape.dots()) {
        left = StrictMath.min(left, dot.x() - shape.width() / 2);
        right = StrictMath.max(right, dot.x() + shape.width() / 2);
        top = StrictMath.min(top, dot.y() - shape.width() / 2);
        bottom = StrictMath.max(bottom, dot.y() + shape.width() / 2);
      }
    }
    return new Frame(left, top, right, bottom);
  }

  Frame grown(double by) {
    return new Frame(left - by, top - by, right + by, bottom + by);
  }

  double width() {
    return right - left;
  }

  double height() {
    return bottom - top;
  }
}
