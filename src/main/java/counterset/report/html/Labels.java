package counterset.report.html;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Finds room for the labels of dots, so that none covers another. */
final class Labels {

  /** The height of a label, in pixels. */
  static final double HEIGHT = 15;

  private Labels() {}

  /**
   * How far down each label stands: where it is wanted if there is room, else as near as can be.
   *
   * <p>Labels of dots that are near each other across share a column. If a column has more of them
   * than there is room for, they are closer than they are high.
   *
   * @param x of the dots, in any unit
   * @param y where the labels are wanted, in pixels
   * @param near how far dots of one column are from the next of it at most, in the unit of x
   */
  static double[] spread(double[] x, double[] y, double near, double top, double bottom) {
    double[] labels = y.clone();
    List<Integer> across =
        IntStream.range(0, x.length).boxed().sorted(Comparator.comparingDouble(i -> x[i])).toList();
    List<Integer> column = new ArrayList<>();
    for (int dot : across) {
      if (!column.isEmpty() && x[dot] - x[column.get(column.size() - 1)] >= near) {
        spread(column, labels, top, bottom);
        column.clear();
      }
      column.add(dot);
    }
    spread(column, labels, top, bottom);
    return labels;
  }

  private static void spread(List<Integer> column, double[] labels, double top, double bottom) {
    List<Integer> down = new ArrayList<>(column);
    down.sort(Comparator.comparingDouble(i -> labels[i]));
    double step = Math.min(HEIGHT, (bottom - top) / Math.max(1, down.size() - 1));
    double least = top;
    for (int i : down) {
      labels[i] = Math.max(labels[i], least);
      least = labels[i] + step;
    }
    double most = bottom;
    for (int place = down.size() - 1; place >= 0; place--) {
      int i = down.get(place);
      labels[i] = Math.min(labels[i], most);
      most = labels[i] - step;
    }
  }
}
