package counterset.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** The front is what a sweep and a plain reading of the definition find. */
class FrontPropertiesTest {

  private record Point(int number, int less, int more) {}

  private static final Front<Point> FRONT =
      new Front<>(
          List.of(
              Comparator.comparingInt(Point::less),
              Comparator.comparingInt(Point::more).reversed()));

  /** Few different values, so that many points are equal in one aim or in both. */
  private static List<Point> points(long seed, int count) {
    Random random = new Random(seed);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      points.add(new Point(i, random.nextInt(6), random.nextInt(6) - 3));
    }
    return points;
  }

  @Property
  void isWhatASweepFinds(@ForAll long seed, @ForAll @IntRange(min = 1, max = 40) int count) {
    List<Point> points = points(seed, count);
    List<Point> sorted = new ArrayList<>(points);
    sorted.sort(
        Comparator.comparingInt(Point::less)
            .thenComparing(Comparator.comparingInt(Point::more).reversed()));
    List<Point> swept = new ArrayList<>();
    int most = Integer.MIN_VALUE;
    for (Point point : sorted) {
      boolean twin =
          !swept.isEmpty()
              && swept.get(swept.size() - 1).less() == point.less()
              && swept.get(swept.size() - 1).more() == point.more();
      if (point.more() > most || twin) {
        swept.add(point);
        most = point.more();
      }
    }
    assertThat(points.stream().filter(it -> FRONT.beating(it, points).isEmpty()).toList())
        .as("seed %d, %d points", seed, count)
        .containsExactlyInAnyOrderElementsOf(swept);
  }

  @Property
  void beatingIsAsDefined(@ForAll long seed, @ForAll @IntRange(min = 1, max = 20) int count) {
    List<Point> points = points(seed, count);
    for (Point point : points) {
      List<Point> brute = new ArrayList<>();
      for (Point other : points) {
        boolean asGood = other.less() <= point.less() && other.more() >= point.more();
        if (asGood && (other.less() != point.less() || other.more() != point.more())) {
          brute.add(other);
        }
      }
      assertThat(FRONT.beating(point, points)).as("seed %d: %s", seed, point).isEqualTo(brute);
    }
  }
}
