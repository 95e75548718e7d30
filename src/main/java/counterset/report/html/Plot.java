package counterset.report.html;

import counterset.compare.TradeOff;
import counterset.model.English;
import counterset.report.CompareWords;
import counterset.report.Numbers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * A trade-off as a picture: less of one aim to the left, more of the other above.
 *
 * <p>Places across are shares of the width in per cent, so that the picture has any width and its
 * text one size; places down are pixels.
 *
 * @param words the same in sentences, for who cannot see it
 * @param steps the front, as lines from each of its points to the next
 */
record Plot(
    String words,
    String acrossTitle,
    String upTitle,
    List<Tick> across,
    List<Tick> up,
    List<Step> steps,
    List<Dot> dots) {

  private static final double LEFT = 15;
  private static final double RIGHT = 96;
  private static final double TOP = 34;
  private static final double BOTTOM = 250;

  /** Dots that are nearer to each other across share one column of labels; in per cent. */
  private static final double NEAR = 9;

  /** How far above its dot a label stands, so that the line of the front does not cross it. */
  private static final double LIFT = 11;

  /** A label further right than this stands to the left of its dot; in per cent. */
  private static final double FAR_RIGHT = 80;

  /** A number beside an axis. */
  record Tick(String at, String text) {}

  /** A straight line. */
  record Step(String fromX, String fromY, String toX, String toY) {}

  /**
   * Plans that stand at one place.
   *
   * @param label their numbers
   * @param down how far below the dot its label stands, in pixels; negative above
   * @param turned whether the label stands to the left
   * @param front whether nothing beats them
   */
  record Dot(String x, String y, String label, String down, boolean turned, boolean front) {}

  /** Where the lines across begin. */
  String left() {
    return percent(LEFT);
  }

  /** Where the numbers of the aim upwards end. */
  String beside() {
    return percent(LEFT - 1);
  }

  /** Where the lines across end. */
  String right() {
    return percent(RIGHT);
  }

  static Plot of(TradeOff tradeOff) {
    List<TradeOff.Point> points = tradeOff.points();
    Scale across = Scale.of(points.stream().mapToDouble(TradeOff.Point::across).toArray());
    Scale up = Scale.of(points.stream().mapToDouble(TradeOff.Point::up).toArray());
    return new Plot(
        words(tradeOff),
        tradeOff.across().title(),
        tradeOff.up().title(),
        across.ticks().stream().map(it -> new Tick(x(across, it), text(it))).toList(),
        up.ticks().stream()
            .filter(it -> tradeOff.up() != TradeOff.Aim.LOADED || it <= 100)
            .map(it -> new Tick(y(up, it), text(it) + unit(tradeOff.up())))
            .toList(),
        steps(points, across, up),
        dots(points, across, up));
  }

  private static String words(TradeOff tradeOff) {
    List<String> sentences =
        tradeOff.points().stream()
            .map(
                it ->
                    "Option "
                        + it.plan().number()
                        + ": "
                        + tradeOff.across().title()
                        + " "
                        + CompareWords.across(it)
                        + ", "
                        + tradeOff.up().title()
                        + " "
                        + CompareWords.up(tradeOff, it)
                        + ", "
                        + CompareWords.standing(it)
                        + ".")
            .toList();
    return English.capital(CompareWords.title(tradeOff)) + ". " + String.join(" ", sentences);
  }

  /** The front as stairs: what lies below or to the right of them is beaten. */
  private static List<Step> steps(List<TradeOff.Point> points, Scale across, Scale up) {
    List<TradeOff.Point> front =
        points.stream()
            .filter(TradeOff.Point::onFront)
            .sorted(Comparator.comparingDouble(TradeOff.Point::across))
            .toList();
    List<Step> steps = new ArrayList<>();
    for (int i = 1; i < front.size(); i++) {
      TradeOff.Point from = front.get(i - 1);
      TradeOff.Point to = front.get(i);
      String corner = x(across, to.across());
      steps.add(new Step(x(across, from.across()), y(up, from.up()), corner, y(up, from.up())));
      steps.add(new Step(corner, y(up, from.up()), corner, y(up, to.up())));
    }
    return steps;
  }

  private static List<Dot> dots(List<TradeOff.Point> points, Scale across, Scale up) {
    Map<List<Double>, List<TradeOff.Point>> places = new LinkedHashMap<>();
    points.forEach(
        it ->
            places
                .computeIfAbsent(List.of(it.across(), it.up()), place -> new ArrayList<>())
                .add(it));
    List<List<TradeOff.Point>> all = new ArrayList<>(places.values());
    double[] x =
        all.stream()
            .mapToDouble(it -> LEFT + (RIGHT - LEFT) * across.share(it.get(0).across()))
            .toArray();
    double[] y =
        all.stream()
            .mapToDouble(it -> BOTTOM - (BOTTOM - TOP) * up.share(it.get(0).up()))
            .toArray();
    double[] wanted = Arrays.stream(y).map(it -> it - LIFT).toArray();
    double[] labels = Labels.spread(x, wanted, NEAR, TOP - LIFT, BOTTOM);
    return IntStream.range(0, all.size())
        .mapToObj(
            i ->
                new Dot(
                    percent(x[i]),
                    pixels(y[i]),
                    numbers(all.get(i)),
                    pixels(labels[i] - y[i]),
                    x[i] > FAR_RIGHT,
                    all.get(i).get(0).onFront()))
        .toList();
  }

  private static String numbers(List<TradeOff.Point> place) {
    return String.join(", ", place.stream().map(it -> String.valueOf(it.plan().number())).toList());
  }

  private static String x(Scale scale, double value) {
    return percent(LEFT + (RIGHT - LEFT) * scale.share(value));
  }

  private static String y(Scale scale, double value) {
    return pixels(BOTTOM - (BOTTOM - TOP) * scale.share(value));
  }

  private static String percent(double share) {
    return Numbers.rounded(share, 2) + "%";
  }

  private static String pixels(double pixels) {
    return Numbers.rounded(pixels, 1);
  }

  private static String unit(TradeOff.Aim aim) {
    return aim == TradeOff.Aim.LOADED ? " %" : "";
  }

  private static String text(double value) {
    return Numbers.rounded(value, 1);
  }
}
