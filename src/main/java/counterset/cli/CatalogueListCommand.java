package counterset.cli;

import counterset.catalogue.CatalogueQuery;
import counterset.json.BadRequest;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Identified;
import counterset.model.Part;
import counterset.model.Region;
import counterset.report.json.CatalogueJson;
import counterset.report.text.CatalogueSheet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists exercises, narrowed by what they train and need. */
@Command(
    name = "list",
    description = "Lists exercises; every option narrows the list.",
    mixinStandardHelpOptions = true)
final class CatalogueListCommand implements Callable<Integer> {

  private final Shell shell;

  @Parameters(arity = "0..*", paramLabel = "WORD", description = "Words that the name must hold.")
  private List<String> words = new ArrayList<>();

  @Option(names = "--part", paramLabel = "PART", description = "main, warm-up or cool-down.")
  private String part;

  @Option(names = "--region", paramLabel = "REGION", description = "upper, lower or core.")
  private String region;

  @Option(names = "--muscle", paramLabel = "ID", description = "A primary muscle group.")
  private String muscle;

  @Option(
      names = "--equipment",
      paramLabel = "ID",
      description = "What it needs; none for nothing.")
  private String equipment;

  @Option(
      names = "--limitation",
      paramLabel = "ID",
      description = "Only what this limitation allows. May be repeated.")
  private List<String> limitations = new ArrayList<>();

  @Option(names = "--pattern", paramLabel = "PATTERN", description = "A movement pattern.")
  private String pattern;

  @Option(names = "--level", paramLabel = "N", description = "1, 2 or 3: that level or below.")
  private Integer level;

  @Option(names = "--format", paramLabel = "KIND", description = "text or json.")
  private Format format = Format.TEXT;

  @Mixin private final CatalogueOptions catalogues = new CatalogueOptions();

  CatalogueListCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() {
    Catalogue catalogue = catalogues.load(shell);
    List<Exercise> exercises = query(catalogue).list();
    if (format == Format.JSON) {
      shell.out().print(CatalogueJson.list(exercises));
      return Exit.DONE;
    }
    shell.out().print(CatalogueSheet.list(exercises));
    shell.say(exercises.size() + " exercises");
    return Exit.DONE;
  }

  private CatalogueQuery query(Catalogue catalogue) {
    CatalogueQuery query = CatalogueQuery.of(catalogue);
    query = part == null ? query : query.part(constant(Part.class, "--part", part));
    query = region == null ? query : query.region(constant(Region.class, "--region", region));
    query = muscle == null ? query : query.muscle(muscle);
    query = equipment == null ? query : query.equipment(equipment);
    query = pattern == null ? query : query.pattern(pattern);
    query = level == null ? query : query.level(checkedLevel());
    for (String limitation : limitations) {
      query = query.limitation(limitation);
    }
    return words.isEmpty() ? query : query.text(String.join(" ", words));
  }

  private int checkedLevel() {
    if (level < 1 || level > 3) {
      throw new BadRequest("--level (" + level + ") must be 1, 2 or 3.");
    }
    return level;
  }

  private static <E extends Enum<E> & Identified> E constant(
      Class<E> type, String option, String id) {
    return Identified.find(type, id)
        .orElseThrow(
            () ->
                new BadRequest(
                    option
                        + " ("
                        + id
                        + ") must be one of "
                        + Arrays.stream(type.getEnumConstants())
                            .map(Identified::id)
                            .collect(Collectors.joining(", "))
                        + "."));
  }
}
