package counterset.report.file;

import counterset.batch.Results;
import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.model.WeekPlan;
import counterset.report.html.Pictures;
import counterset.report.text.Detail;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The results of a batch as files in one folder.
 *
 * @param kinds the endings of the files, without a dot
 * @param pictures of the exercises, for pages
 */
public record FolderResults(Path folder, List<String> kinds, Catalogue catalogue, Pictures pictures)
    implements Results {

  @Override
  public boolean areAllThere(String file) {
    return kinds.stream().allMatch(kind -> Files.isRegularFile(result(file, kind)));
  }

  @Override
  public boolean isAnyThere(String file) {
    return kinds.stream().anyMatch(kind -> Files.isRegularFile(result(file, kind)));
  }

  @Override
  public void write(String file, Plan plan) {
    Handout handout = new Handout(plan, catalogue, pictures, Detail.BRIEF);
    write(file, ending -> Handout.KINDS.render(ending, handout));
  }

  @Override
  public void write(String file, WeekPlan week) {
    WeekHandout handout =
        new WeekHandout(
            List.of(week),
            List.of(),
            catalogue,
            Optional.empty(),
            Optional.empty(),
            pictures,
            Detail.BRIEF);
    write(file, ending -> WeekHandout.KINDS.render(ending, handout));
  }

  private void write(String file, UnaryOperator<String> text) {
    Map<Path, String> texts = new LinkedHashMap<>();
    kinds.forEach(kind -> texts.put(result(file, kind), text.apply("." + kind)));
    WholeFiles.write(texts);
  }

  private Path result(String file, String kind) {
    return folder.resolve(file.substring(0, file.lastIndexOf('.')) + "." + kind);
  }
}
