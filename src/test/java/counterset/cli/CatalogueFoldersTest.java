package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.Catalogues;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code --catalogue} and {@code --add-catalogue} with a catalogue of a few lines. */
class CatalogueFoldersTest {

  @TempDir Path folder;

  @BeforeEach
  void write() throws IOException {
    Files.createDirectories(folder.resolve("own/exercises"));
    Files.createDirectories(folder.resolve("more/exercises"));
    Cli.write(
        folder,
        "own/muscles.json",
        """
        [{"id": "quadriceps", "name": "Quadriceps", "region": "lower", "aspect": "front",
          "opposes": ["hamstrings"]},
         {"id": "hamstrings", "name": "Hamstrings", "region": "lower", "aspect": "back",
          "opposes": ["quadriceps"]}]
        """);
    Cli.write(
        folder,
        "own/equipment.json",
        """
        [{"id": "wall", "name": "Wall", "kind": "fixed", "putOnSeconds": 0, "takeOffSeconds": 0}]
        """);
    Cli.write(folder, "own/limitations.json", "[]");
    Cli.write(
        folder,
        "own/exercises/all.json",
        "[" + exercise("step-back", "quadriceps") + "," + exercise("fold", "hamstrings") + "]");
    Cli.write(
        folder, "more/exercises/new.json", "[" + exercise("tall-stand-up", "quadriceps") + "]");
  }

  private static String exercise(String id, String muscle) {
    return """
    {"id": "%s", "name": "Move %s", "part": "main", "pattern": "%s", "family": "%s",
     "multiJoint": true, "intensity": 2, "level": 1, "primary": ["%s"], "sides": "bilateral",
     "position": "standing", "demand": {"knee": 1}, "demandSource": "common-practice",
     "traits": [], "met": {"code": "02052", "edition": 2024, "value": 5.0},
     "setup": "Stand.", "cues": ["Go."]}
    """
        .formatted(id, id, muscle.equals("quadriceps") ? "squat" : "hinge", id, muscle);
  }

  @Test
  void aCatalogueOfOnesOwnReplacesTheBuiltInOne() {
    Cli list = Cli.run(folder, "catalogue", "list", "--catalogue", "own").succeeds();
    assertThat(list.out().lines()).hasSize(2).allMatch(line -> line.contains(" standing "));
    assertThat(list.err()).isEqualTo("2 exercises\n");
  }

  @Test
  void aSessionIsPlannedFromIt() {
    Cli plan =
        Cli.run(
                folder,
                "plan",
                "4 min, quadriceps and hamstrings",
                "--effort",
                "quick",
                "--catalogue",
                "own",
                "--write",
                "plan.json")
            .succeeds();
    assertThat(plan.out()).contains("Move step-back", "Move fold");
    assertThat(Cli.run(folder, "check", "plan.json", "--catalogue", "own").status())
        .isEqualTo(Exit.DONE);
    assertThat(Cli.run(folder, "check", "plan.json").isRefused(2).err())
        .contains("The exercise (step-back) is not known.", "The exercise (fold) is not known.");
  }

  @Test
  void additionsExtendEitherCatalogue() {
    int builtIn = Catalogues.embedded().exercises().size();
    assertThat(Cli.run(folder, "catalogue", "list", "--add-catalogue", "more").succeeds().err())
        .isEqualTo(builtIn + 1 + " exercises\n");
    assertThat(
            Cli.run(folder, "catalogue", "list", "--catalogue", "own", "--add-catalogue", "more")
                .succeeds()
                .err())
        .isEqualTo("3 exercises\n");
  }

  @Test
  void anExerciseThatIsThereAlreadyIsRefused() {
    Cli.write(
        folder, "more/exercises/new.json", "[" + exercise("goblet-squat", "quadriceps") + "]");
    assertThat(Cli.run(folder, "catalogue", "list", "--add-catalogue", "more").isRefused(1).err())
        .contains("goblet-squat");
  }

  @Test
  void faultsAreNamedWithFileAndPlace() {
    Cli.write(
        folder,
        "more/exercises/new.json",
        "["
            + exercise("new", "quadricep")
            + ","
            + exercise("newer", "hamstrings").replace("\"hinge\"", "\"hinge\", \"levle\": 2")
            + "]");
    Cli list = Cli.run(folder, "catalogue", "list", "--add-catalogue", "more").speaksPlainly();
    assertThat(list.status()).isEqualTo(Exit.BAD_INPUT);
    assertThat(list.err())
        .contains("new.json:", " /0/primary/0: ", "Maybe \"quadriceps\"?")
        .contains(" /1/levle: ", "Maybe \"level\"?");
  }

  @Test
  void foldersThatAreNone() {
    Cli.run(folder, "catalogue", "list", "--catalogue", "nowhere").isRefused(1);
    Cli.run(folder, "catalogue", "list", "--add-catalogue", "nowhere").isRefused(1);
    Cli.run(folder, "catalogue", "list", "--catalogue", "own/muscles.json").isRefused(1);
    Cli.run(folder, "plan", "5 min, quadriceps", "--catalogue", "nowhere").isRefused(1);
  }

  @Test
  void aFolderWithoutTheFilesOfACatalogue() throws IOException {
    Files.createDirectories(folder.resolve("bare"));
    Cli list = Cli.run(folder, "catalogue", "list", "--catalogue", "bare").speaksPlainly();
    assertThat(list.status()).isEqualTo(Exit.BAD_INPUT);
    assertThat(list.err()).contains("muscles.json");
  }
}
