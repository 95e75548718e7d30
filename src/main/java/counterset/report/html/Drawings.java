package counterset.report.html;

import counterset.figure.Drawing;
import counterset.model.Exercise;
import counterset.model.Figure;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The pictures of the exercises that have a figure, which are read when the first is asked for.
 * Safe to share between threads.
 */
public final class Drawings implements Pictures {

  private final Supplier<Map<String, Figure>> source;
  private final Map<String, Drawing> drawings = new HashMap<>();
  private Map<String, Figure> figures;

  /** Pictures of the figures of some catalogue, by id. */
  public Drawings(Supplier<Map<String, Figure>> source) {
    this.source = source;
  }

  @Override
  public Optional<String> still(Exercise exercise) {
    return drawing(exercise)
        .map(drawing -> drawing.still(words(exercise, "the start and the end of the movement")));
  }

  @Override
  public Optional<String> moving(Exercise exercise) {
    return drawing(exercise).map(drawing -> drawing.moving(words(exercise, "the movement")));
  }

  @Override
  public String styles() {
    return Drawing.styles();
  }

  private static String words(Exercise exercise, String what) {
    return exercise.name() + ", " + what + ". " + exercise.setup();
  }

  private synchronized Optional<Drawing> drawing(Exercise exercise) {
    if (figures == null) {
      figures = source.get();
    }
    return exercise
        .figure()
        .map(figures::get)
        .map(
            figure -> drawings.computeIfAbsent(exercise.id(), id -> new Drawing(exercise, figure)));
  }
}
