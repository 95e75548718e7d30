package counterset.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterset.model.Angle;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** How a body gives way to what it touches. */
class FitTest {

  /** By how much each gives as easily: computed with, and said nowhere else. */
  private static final double LIMB_DEGREES = 15;

  private static final double TRUNK_DEGREES = 6;
  private static final double HIPS_METRES = 0.3;

  /** Upright, the soles so far above the floor. */
  private static Stance upright(double above) {
    double[] degrees = new double[Angle.values().length];
    for (Angle angle : Angle.values()) {
      degrees[angle.ordinal()] = angle.usual();
    }
    Stance loose = new Stance(degrees, Vec.ZERO);
    double lowest =
        Arrays.stream(Spot.values())
            .mapToDouble(spot -> Surface.FLOOR.gap(spot, loose.body().at(spot)))
            .min()
            .orElseThrow();
    return new Stance(degrees, new Vec(0, above - lowest, 0));
  }

  /** A point that has to be elsewhere than it is. */
  private static Contact moved(Stance stance, Spot spot, Vec by) {
    return new Contact(spot, Surface.FLOOR, Optional.of(stance.body().at(spot).plus(by)));
  }

  private static double miss(Contact contact, Stance stance) {
    double square = 0;
    for (double miss : contact.misses(stance.body())) {
      square += miss * miss;
    }
    return Math.sqrt(square);
  }

  private static Set<Angle> changed(Stance from, Stance to) {
    return Arrays.stream(Angle.values())
        .filter(angle -> from.degrees()[angle.ordinal()] != to.degrees()[angle.ordinal()])
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Angle.class)));
  }

  @Test
  void whatStandsAlreadyStays() {
    Stance start = upright(0);
    List<Contact> feet =
        List.of(Spot.RIGHT_HEEL, Spot.RIGHT_TOE, Spot.LEFT_HEEL, Spot.LEFT_TOE).stream()
            .map(spot -> new Contact(spot, Surface.FLOOR, Optional.empty()))
            .toList();
    assertThat(Fit.of(start, feet)).isEqualTo(start);
  }

  /**
   * In a least sum of squares under a condition every part gives in proportion to its lever and to
   * the square of what it gives as easily (the conditions of Lagrange). The hips show the price of
   * a metre, and each angle has to pay the same.
   */
  @ParameterizedTest
  @EnumSource(names = {"RIGHT_HAND", "LEFT_HAND", "RIGHT_ELBOW", "RIGHT_KNEE", "LEFT_TOE", "HEAD"})
  void everyPartGivesInProportionToItsLever(Spot spot) {
    Stance start = upright(0.5);
    Contact contact = moved(start, spot, new Vec(0.02, 0.01, 0.015));
    Stance found = Fit.of(start, List.of(contact));
    Vec hips = found.hips().minus(start.hips());
    for (Angle angle : changed(start, found)) {
      double scale =
          angle.part() == Angle.Part.WHOLE || angle.part() == Angle.Part.TRUNK
              ? TRUNK_DEGREES
              : LIMB_DEGREES;
      Vec lever = lever(found, spot, angle);
      double expected =
          scale
              * scale
              * (lever.x() * hips.x() + lever.y() * hips.y() + lever.z() * hips.z())
              / (HIPS_METRES * HIPS_METRES);
      assertThat(found.degrees()[angle.ordinal()] - start.degrees()[angle.ordinal()])
          .as("%s", angle)
          .isCloseTo(expected, within(0.02 + 0.01 * Math.abs(expected)));
    }
    assertThat(miss(contact, found)).isLessThan(1e-6);
  }

  /** How a point moves with an angle, in metres a degree. */
  private static Vec lever(Stance stance, Spot spot, Angle angle) {
    double[] more = stance.degrees().clone();
    double[] less = stance.degrees().clone();
    more[angle.ordinal()] += 0.01;
    less[angle.ordinal()] -= 0.01;
    Vec apart =
        new Stance(more, stance.hips())
            .body()
            .at(spot)
            .minus(new Stance(less, stance.hips()).body().at(spot));
    return apart.times(1 / 0.02);
  }

  @Test
  void onlyTheLimbThatTouchesAndTheWholeBodyGive() {
    Stance start = upright(0.5);
    assertThat(freed(start, Spot.RIGHT_HAND)).containsOnly(Angle.Part.WHOLE, Angle.Part.RIGHT_ARM);
    assertThat(freed(start, Spot.LEFT_ELBOW)).containsOnly(Angle.Part.WHOLE, Angle.Part.LEFT_ARM);
    for (Spot spot : List.of(Spot.RIGHT_KNEE, Spot.RIGHT_ANKLE, Spot.RIGHT_HEEL, Spot.RIGHT_TOE)) {
      assertThat(freed(start, spot)).containsOnly(Angle.Part.WHOLE, Angle.Part.RIGHT_LEG);
    }
    assertThat(freed(start, Spot.LEFT_TOE)).containsOnly(Angle.Part.WHOLE, Angle.Part.LEFT_LEG);
    assertThat(freed(start, Spot.SEAT)).as("the hips alone").isEmpty();
  }

  private static Set<Angle.Part> freed(Stance start, Spot spot) {
    Vec by = new Vec(0.02, 0.01, 0.015);
    return changed(start, Fit.of(start, List.of(moved(start, spot, by)))).stream()
        .map(Angle::part)
        .collect(Collectors.toSet());
  }

  @Test
  void theNeckGivesToTheHeadOnlyAndShouldersAreNeverShrugged() {
    Stance start = upright(0.5);
    Contact head = moved(start, Spot.HEAD, new Vec(0.02, 0, 0));
    Contact hand = moved(start, Spot.RIGHT_HAND, new Vec(0, 0.03, 0.03));
    assertThat(changed(start, Fit.of(start, List.of(head)))).contains(Angle.NECK);
    assertThat(changed(start, Fit.of(start, List.of(hand))))
        .doesNotContain(Angle.NECK, Angle.RIGHT_SHRUG);
  }

  /** The hand is drawn 3 cm down while the soles are on the floor: arm and trunk have to give. */
  @Test
  void nothingIsPressedBelowTheFloor() {
    Stance start = upright(0);
    Contact hand = moved(start, Spot.RIGHT_HAND, new Vec(0, -0.03, 0));
    Body body = Fit.of(start, List.of(hand)).body();
    for (Spot spot : Spot.values()) {
      assertThat(Surface.FLOOR.gap(spot, body.at(spot))).as("%s", spot).isGreaterThan(-1e-3);
    }
  }

  /** An elbow bends back by 5 degrees and no further; what it can't do, others have to. */
  @Test
  void jointsStayInTheirRange() {
    Stance start = upright(0.5);
    double[] bent = start.degrees().clone();
    bent[Angle.RIGHT_ELBOW.ordinal()] = -30;
    Vec place = new Stance(bent, start.hips()).body().at(Spot.RIGHT_HAND);
    Contact hand = new Contact(Spot.RIGHT_HAND, Surface.FLOOR, Optional.of(place));
    Contact elbow = moved(start, Spot.RIGHT_ELBOW, Vec.ZERO);
    Stance found = Fit.of(start, List.of(hand, elbow));
    assertThat(found.degrees()[Angle.RIGHT_ELBOW.ordinal()]).isBetween(-5.5, 0.0);
  }
}
