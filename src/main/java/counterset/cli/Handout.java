package counterset.cli;

import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.report.html.Pictures;
import counterset.training.LoadAdvice;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plan to be written to files.
 *
 * @param loads advice on loads; empty if no journal was read
 * @param day of the session, if it is known
 * @param start when the session begins, if it is known
 * @param pictures of the exercises, for pages
 */
record Handout(
    Plan plan,
    Catalogue catalogue,
    List<LoadAdvice> loads,
    Optional<LocalDate> day,
    Optional<LocalTime> start,
    Pictures pictures) {

  /** A plan of which no more is known than it says itself. */
  Handout(Plan plan, Catalogue catalogue, Pictures pictures) {
    this(plan, catalogue, List.of(), plan.problem().date(), Optional.empty(), pictures);
  }

  /**
   * Writes files, whole or not at all.
   *
   * @param files names whose endings are known
   * @throws BadRequest if one of them cannot be written, or needs a day that is not known
   */
  void write(List<String> files, Shell shell) {
    StartOption.needsDay(files, day);
    Map<Path, String> texts = new LinkedHashMap<>();
    files.forEach(file -> texts.put(shell.path(file), PlanFormats.render(file, this)));
    OutputFiles.write(texts);
  }
}
