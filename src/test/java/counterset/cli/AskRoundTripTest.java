package counterset.cli;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever can be asked for in a line can be written to a plan file, read back and checked. */
class AskRoundTripTest {

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "20 min, upper body, two 6 kg dumbbells, a 10 kg dumbbell",
        "half an hour, whole body, dumbbells 4 and 8 kg, kettlebell, mat, cool-down 2 min",
        "15 min, legs, light dumbbells, 2 rounds, no lunges, likes hinges",
        "25 min, core and arms, tri-sets, long band, 40/5/40",
        "12 min, no floor, unsteady balance, chair, beginner",
        "20 min, compound sets, biceps and triceps, dumbbells, more triceps",
      })
  void planOfAnAskIsAcceptedByCheck(String ask) {
    Cli.run(folder, "plan", ask, "--effort", "quick", "--write", "plan.json").succeeds();
    Cli.run(folder, "check", "plan.json").succeeds();
  }
}
