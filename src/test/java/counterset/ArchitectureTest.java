package counterset;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaConstructorCall;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import counterset.model.Exercise;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Arrows between packages run downward only. A package that does not exist yet breaks nothing. */
class ArchitectureTest {

  private static final JavaClasses CLASSES = new ClassFileImporter().importPath(programClasses());

  /** Package by package, the packages of this program that it may depend on. */
  private static final Map<String, Set<String>> ARROWS =
      Map.ofEntries(
          Map.entry("model", Set.of()),
          Map.entry("spelling", Set.of()),
          Map.entry("json", Set.of("spelling")),
          Map.entry("catalogue", Set.of("model", "json", "spelling")),
          Map.entry("problem", Set.of("model", "catalogue", "json", "spelling")),
          Map.entry("ask", Set.of("model", "catalogue", "spelling")),
          Map.entry("timeline", Set.of("model")),
          Map.entry("typed", Set.of("model", "ask", "timeline", "spelling")),
          Map.entry("score", Set.of("model", "timeline")),
          Map.entry("search", Set.of("score", "model", "timeline")),
          Map.entry("bound", Set.of("score", "model", "timeline")),
          Map.entry("explain", Set.of("score", "model")),
          Map.entry("journal", Set.of("model", "json")),
          Map.entry("batch", Set.of("model", "json", "problem", "explain", "search")),
          Map.entry("training", Set.of("model", "json", "journal")),
          Map.entry("figure", Set.of("model")),
          Map.entry(
              "review",
              Set.of(
                  "model",
                  "json",
                  "timeline",
                  "typed",
                  "explain",
                  "search",
                  "bound",
                  "report",
                  "report.text",
                  "report.json")),
          Map.entry(
              "intake",
              Set.of(
                  "model",
                  "json",
                  "problem",
                  "ask",
                  "typed",
                  "timeline",
                  "score",
                  "search",
                  "explain",
                  "report.json",
                  "review",
                  "compare")),
          Map.entry("compare", Set.of("model", "score", "explain", "search", "batch")),
          Map.entry("report", Set.of("model", "timeline", "explain")),
          Map.entry("report.text", Set.of("report", "model", "score", "timeline", "explain")),
          Map.entry("report.json", Set.of("report", "model", "score", "timeline", "explain")),
          Map.entry("report.html", Set.of("report", "model", "timeline", "explain")),
          Map.entry("report.vtt", Set.of("report", "model", "timeline", "explain")),
          Map.entry("report.ics", Set.of("report", "model", "timeline", "explain")),
          Map.entry("report.md", Set.of("report", "model", "timeline", "explain")),
          Map.entry("report.csv", Set.of("report", "model", "timeline", "explain")),
          Map.entry(
              "report.file",
              Set.of(
                  "report.text",
                  "report.json",
                  "report.html",
                  "report.vtt",
                  "report.ics",
                  "report.md",
                  "report.csv",
                  "model",
                  "json",
                  "problem",
                  "training",
                  "batch",
                  "compare")));

  /** Arrows that the design does not draw, and why they are there. */
  private static final Map<String, Set<String>> EXCEPTIONS =
      Map.of(
          // Every enum of the model has an id, which the cursor reads.
          "json", Set.of("model"),
          // How many supersets fit, and the clock of a finished plan: the only clock is there.
          "search", Set.of("timeline"),
          // The room of a pause that a sentence tells of.
          "explain", Set.of("timeline"),
          // What plans side by side come to, in the words that every form of it shows.
          "report", Set.of("compare"),
          // The one configured mapper, the resolved problem that a plan file echoes, what a journal
          // holds and comes to, what came of the files of a folder, what each line of a typed
          // session was taken for, and a comparison.
          "report.json",
              Set.of("json", "problem", "journal", "training", "batch", "typed", "compare"),
          // The one way of printing JSON: what the clock of a page runs by; the pictures of the
          // exercises; and a comparison.
          "report.html", Set.of("json", "figure", "compare"),
          // What the catalogue lists and lacks, what a journal holds and comes to, the advice on
          // loads that a run sheet shows, what came of the files of a folder, and a comparison.
          "report.text", Set.of("catalogue", "journal", "training", "batch", "compare"));

  private static final int MOST_PARTS = 8;

  /** Classes of one package that need each other, and why. */
  private static final List<Set<String>> TANGLES =
      List.of(
          // The plan of a track is a plan, and the plan of a class holds those of its tracks.
          Set.of("model.Plan", "model.Track"),
          Set.of("report.json.PlanJson", "report.json.TrackJson"),
          Set.of("search.Assembly", "search.TrackPlans"),
          // A cursor adds its faults to those of its document, which know the places in it.
          Set.of(
              "json.Cursor", "json.Faults", "json.JsonDocument", "json.Places", "json.SchemaWords"),
          // The parts of one line, which hold and read each other.
          Set.of("typed.Group", "typed.Item", "typed.Note", "typed.Sayings", "typed.Segment"),
          Set.of("typed.Clean", "typed.Report", "typed.Source"),
          // Not yet disentangled.
          Set.of("ask.AskDraft", "ask.Slot"),
          Set.of("ask.OwnWords", "ask.Vocabulary"),
          Set.of("ask.Contradictions", "ask.ExerciseChecks"),
          Set.of("bound.Paths", "bound.Trace"),
          Set.of("catalogue.Catalogues", "catalogue.Compiled"),
          Set.of("catalogue.ExerciseRules", "catalogue.Integrity"),
          Set.of("cli.Main", "cli.Relaunch"),
          Set.of("explain.ModificationWords", "explain.WorkWords"),
          Set.of("training.AdviceWords", "training.LoadAdviser"));

  private static Path programClasses() {
    return classesOf(Exercise.class);
  }

  private static Path testClasses() {
    return classesOf(ArchitectureTest.class);
  }

  private static Path classesOf(Class<?> one) {
    try {
      return Path.of(one.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException("The place of the classes is not known.", e);
    }
  }

  static Stream<String> packages() {
    return ARROWS.keySet().stream().sorted();
  }

  @ParameterizedTest
  @MethodSource("packages")
  void arrowsRunDownwardOnly(String name) {
    Set<String> allowed = new TreeSet<>(ARROWS.get(name));
    allowed.addAll(EXCEPTIONS.getOrDefault(name, Set.of()));
    allowed.add(name);
    String[] targets =
        allowed.stream().map(target -> "counterset." + target).toArray(String[]::new);
    noClasses()
        .that(resideInAPackage("counterset." + name))
        .should()
        .dependOnClassesThat(resideInAPackage("counterset..").and(resideOutsideOfPackages(targets)))
        .allowEmptyShould(true)
        .check(CLASSES);
  }

  @Test
  void everyPackageHasItsRow() {
    Set<String> packages = new TreeSet<>();
    for (JavaClass type : CLASSES) {
      packages.add(type.getPackageName().replaceFirst("^counterset\\.?", ""));
    }
    packages.removeAll(Set.of("cli"));
    assertThat(packages).isSubsetOf(ARROWS.keySet());
  }

  @Test
  void nothingImportsTheCommandLine() {
    noClasses()
        .that(resideOutsideOfPackages("counterset.cli.."))
        .should()
        .dependOnClassesThat(resideInAPackage("counterset.cli.."))
        .check(CLASSES);
  }

  @Test
  void thereAreNoCycles() {
    slices().matching("counterset.(**)").should().beFreeOfCycles().check(CLASSES);
  }

  /** Inside a package, too: whoever reads a class has an end to come to. */
  @Test
  void thereAreNoCyclesInsideAPackage() {
    slices().assignedFrom(new ByClass()).should().beFreeOfCycles().check(CLASSES);
  }

  /** Every class with the classes inside it is a slice; classes of a known tangle are one slice. */
  private static final class ByClass implements SliceAssignment {

    @Override
    public String getDescription() {
      return "classes, nested ones with their outermost";
    }

    @Override
    public SliceIdentifier getIdentifierOf(JavaClass type) {
      String name = outermost(type).replaceFirst("Builder$", "");
      for (Set<String> tangle : TANGLES) {
        if (tangle.contains(name.replaceFirst("^counterset\\.", ""))) {
          return SliceIdentifier.of(tangle.toString());
        }
      }
      return SliceIdentifier.of(name);
    }
  }

  /** Which packages may use which library. */
  @Test
  void librariesStayWhereTheyBelong() {
    only("ai.timefold..", "search");
    only("picocli..", "cli..");
    only(
        "com.fasterxml..",
        "json",
        "catalogue",
        "problem",
        "journal",
        "batch",
        "report.json",
        "report.html");
    only("com.samskivert..", "report.html");
    only("com.networknt..", "json");
  }

  private static void only(String library, String... packages) {
    String[] full = Stream.of(packages).map(name -> "counterset." + name).toArray(String[]::new);
    noClasses()
        .that(resideOutsideOfPackages(full))
        .should()
        .dependOnClassesThat(resideInAnyPackage(library))
        .check(CLASSES);
  }

  @Test
  void theModelDependsOnTheJdkOnly() {
    noClasses()
        .that(resideInAnyPackage("counterset.model", "counterset.timeline", "counterset.ask"))
        .should()
        .dependOnClassesThat(resideOutsideOfPackages("java..", "counterset.."))
        .check(CLASSES);
  }

  /** Values in a long row are easily swapped: a builder names each of them. */
  @Test
  void recordsOfManyPartsAreMadeByTheirBuilderOrInOnePlaceOnly() {
    Map<String, Set<String>> makers = new TreeMap<>();
    for (JavaClass type : new ClassFileImporter().importPaths(programClasses(), testClasses())) {
      for (JavaConstructorCall call : type.getConstructorCallsFromSelf()) {
        JavaClass made = call.getTargetOwner();
        int parts = call.getTarget().getRawParameterTypes().size();
        String maker = outermost(type);
        if (made.isRecord()
            && parts > MOST_PARTS
            && parts == parts(made)
            && !Set.of(outermost(made), made.getName() + "Builder").contains(maker)) {
          makers.computeIfAbsent(made.getName(), name -> new TreeSet<>()).add(maker);
        }
      }
    }
    assertThat(makers).isNotEmpty().allSatisfy((made, by) -> assertThat(by).hasSize(1));
  }

  private static long parts(JavaClass made) {
    return made.getFields().stream()
        .filter(field -> !field.getModifiers().contains(JavaModifier.STATIC))
        .count();
  }

  private static String outermost(JavaClass type) {
    return type.getName().replaceFirst("\\$.*", "");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "java.util.Date",
        "java.util.Calendar",
        "java.text.SimpleDateFormat",
        "java.io.FileReader"
      })
  void oldAndDefaultingClassesAreNotUsed(String type) {
    noClasses().should().dependOnClassesThat().haveFullyQualifiedName(type).check(CLASSES);
  }

  /** Calls that take the locale, the character set, the time zone or the time from the machine. */
  @Test
  void nothingIsTakenFromTheMachineUnasked() {
    Class<?> text = String.class;
    var rule =
        noClasses()
            .should()
            .callMethod(text, "format", String.class, Object[].class)
            .orShould()
            .callMethod(text, "formatted", Object[].class)
            .orShould()
            .callMethod(text, "toLowerCase")
            .orShould()
            .callMethod(text, "toUpperCase")
            .orShould()
            .callMethod(text, "getBytes")
            .orShould()
            .callConstructor(text, byte[].class)
            .orShould()
            .callConstructor(java.io.InputStreamReader.class, java.io.InputStream.class)
            .orShould()
            .callConstructor(java.io.OutputStreamWriter.class, java.io.OutputStream.class)
            .orShould()
            .callConstructor(java.io.PrintWriter.class, java.io.OutputStream.class)
            .orShould()
            .callConstructor(java.io.PrintWriter.class, java.io.OutputStream.class, boolean.class)
            .orShould()
            .callMethod(java.io.PrintWriter.class, "printf", String.class, Object[].class)
            .orShould()
            .callMethod(java.io.PrintStream.class, "printf", String.class, Object[].class)
            .orShould()
            .callMethod(java.util.Locale.class, "getDefault")
            .orShould()
            .callMethod(java.nio.charset.Charset.class, "defaultCharset")
            .orShould()
            .callMethod(java.time.ZoneId.class, "systemDefault");
    rule.check(CLASSES);
  }

  @Test
  void nothingReadsTheTimeWithoutAClock() {
    for (Class<?> type :
        List.of(
            java.time.LocalDate.class,
            java.time.LocalDateTime.class,
            java.time.Instant.class,
            java.time.ZonedDateTime.class)) {
      noClasses().should().callMethod(type, "now").check(CLASSES);
    }
  }

  @Test
  void onlyMainSpeaksToTheSystem() {
    noClasses()
        .that()
        .doNotHaveFullyQualifiedName("counterset.cli.Main")
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .callMethod(System.class, "exit", int.class)
        .check(CLASSES);
  }
}
