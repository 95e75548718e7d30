package counterset.bench;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategoryChartBuilder;
import org.knowm.xchart.VectorGraphicsEncoder;
import org.knowm.xchart.VectorGraphicsEncoder.VectorGraphicsFormat;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.internal.chartpart.Chart;
import org.knowm.xchart.style.Styler.LegendPosition;

/** The measurements as SVG pictures. */
final class Charts {

  private static final int WIDTH = 1000;
  private static final int HEIGHT = 560;
  private static final int STEEP = 60;

  private Charts() {}

  /** Bars side by side for each label. A value that does not exist is null. */
  static void bars(
      Path file, String title, String unit, List<String> labels, Map<String, List<Double>> series)
      throws IOException {
    CategoryChart chart =
        new CategoryChartBuilder()
            .width(WIDTH)
            .height(HEIGHT)
            .title(title)
            .yAxisTitle(unit)
            .build();
    chart.getStyler().setXAxisLabelRotation(STEEP).setLegendPosition(LegendPosition.OutsideS);
    series.forEach((name, values) -> chart.addSeries(name, labels, values));
    write(file, chart);
  }

  /** A line for each name over the same numbers. */
  static void lines(
      Path file,
      String title,
      String xUnit,
      String yUnit,
      List<Integer> x,
      Map<String, List<Double>> series)
      throws IOException {
    XYChart chart =
        new XYChartBuilder()
            .width(WIDTH)
            .height(HEIGHT)
            .title(title)
            .xAxisTitle(xUnit)
            .yAxisTitle(yUnit)
            .build();
    chart.getStyler().setYAxisMin(0.0).setLegendPosition(LegendPosition.OutsideE);
    series.forEach((name, values) -> chart.addSeries(name, new ArrayList<>(x), values));
    write(file, chart);
  }

  private static void write(Path file, Chart<?, ?> chart) throws IOException {
    ByteArrayOutputStream svg = new ByteArrayOutputStream();
    VectorGraphicsEncoder.saveVectorGraphic(chart, svg, VectorGraphicsFormat.SVG);
    Files.writeString(file, titled(svg.toString(UTF_8), chart.getTitle()));
  }

  /** Letters are drawn as outlines, so whoever cannot see the picture is told its title. */
  private static String titled(String svg, String title) {
    int end = svg.indexOf('>', svg.indexOf("<svg")) + 1;
    String escaped = title.replace("&", "&amp;").replace("<", "&lt;");
    return svg.substring(0, end) + "<title>" + escaped + "</title>" + svg.substring(end);
  }
}
