package counterset.figure;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Angle;
import counterset.model.Figure;
import counterset.model.Pose;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PoseFaultsTest {

  private static final Pose UPRIGHT = new Pose(Map.of(), List.of("feet"), List.of());

  @Test
  void aSquatOnFlatFeetHasNoFault() {
    Pose low =
        pose(
            Map.of(
                Angle.LEAN, 42.0,
                Angle.RIGHT_HIP_FLEX, 105.0,
                Angle.LEFT_HIP_FLEX, 105.0,
                Angle.RIGHT_KNEE, 105.0,
                Angle.LEFT_KNEE, 105.0,
                Angle.RIGHT_ANKLE, 32.0,
                Angle.LEFT_ANKLE, 32.0));

    assertThat(PoseFaults.of(figure(UPRIGHT, low))).isEmpty();
  }

  @Test
  void feetThatCannotStayWhereTheyStandAreFound() {
    Pose split = pose(Map.of(Angle.RIGHT_HIP_FLEX, 60.0, Angle.LEFT_HIP_FLEX, -30.0));

    assertThat(PoseFaults.of(figure(UPRIGHT, split)))
        .anyMatch(fault -> fault.startsWith("pose 2: rightHipFlex is 60, needed is"));
  }

  @Test
  void aHandThatCannotReachTheFloorIsFound() {
    Pose reaching = new Pose(Map.of(), List.of("feet", "hands"), List.of());

    assertThat(PoseFaults.of(figure(UPRIGHT, reaching)))
        .anyMatch(fault -> fault.startsWith("pose 2: right-heel is off by"))
        .anyMatch(fault -> fault.startsWith("pose 2: right-heel is below the floor by"));
  }

  @Test
  void aJointBeyondItsRangeIsFound() {
    Pose bent = pose(Map.of(Angle.RIGHT_ELBOW, -60.0));

    assertThat(PoseFaults.of(figure(UPRIGHT, bent)))
        .containsExactly("pose 2: rightElbow (-60) is beyond its range");
  }

  private static Pose pose(Map<Angle, Double> angles) {
    return new Pose(angles, List.of("feet"), List.of());
  }

  private static Figure figure(Pose... poses) {
    return new Figure(
        "tried",
        Figure.View.SIDE,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(poses));
  }
}
