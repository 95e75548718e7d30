package counterset.figure;

import counterset.catalogue.Catalogues;
import counterset.catalogue.Figures;
import counterset.model.Exercise;
import counterset.model.Figure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * Writes a page with the pictures of exercises or figures, to be looked at: {@code ContactSheet
 * FILE.html NAME...}, where a name is that of an exercise, of a figure, or the start of one ending
 * in an asterisk.
 */
final class ContactSheet {

  private ContactSheet() {}

  public static void main(String[] args) throws IOException {
    Map<String, Figure> figures = Figures.embedded();
    List<Exercise> exercises = List.copyOf(Catalogues.embedded().exercises().values());
    StringBuilder page =
        new StringBuilder(
            "<!doctype html><meta charset=utf-8><style>body{font:13px sans-serif;margin:8px}"
                + "div{display:inline-block;width:19%;margin:0 0 10px 0;vertical-align:top}"
                + "svg{width:100%;height:190px}p{margin:0;text-align:center}b{color:#b00}"
                + Drawing.styles()
                + "</style>");
    for (String name : Arrays.asList(args).subList(1, args.length)) {
      for (Figure figure : figures.values()) {
        List<Exercise> shown =
            exercises.stream()
                .filter(e -> e.figure().equals(java.util.Optional.of(figure.id())))
                .toList();
        if (fits(name, figure.id())) {
          tile(page, figure, shown.isEmpty() ? Bare.exercise() : shown.get(0));
        }
        shown.stream()
            .filter(exercise -> fits(name, exercise.id()) && !fits(name, figure.id()))
            .forEach(exercise -> tile(page, figure, exercise));
      }
    }
    Files.writeString(Path.of(args[0]), page.toString());
  }

  private static boolean fits(String name, String id) {
    return name.endsWith("*")
        ? id.startsWith(name.substring(0, name.length() - 1))
        : id.equals(name);
  }

  private static void tile(StringBuilder page, Figure figure, Exercise exercise) {
    page.append("<div>")
        .append(new Drawing(exercise, figure).still(exercise.name()))
        .append("<p>")
        .append(figure.id())
        .append(" (")
        .append(exercise.id())
        .append(") <b>")
        .append(String.join("; ", PoseFaults.of(figure)))
        .append("</b></p></div>\n");
  }
}
