package counterset.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A point of the body, and how thick the body is around it, in metres. */
enum Spot {
  HEAD(0.1),
  NECK(0.05),
  CHEST(0.11),
  WAIST(0.1),
  SEAT(0.105),
  RIGHT_SHOULDER(0.055),
  RIGHT_ELBOW(0.04),
  RIGHT_HAND(0.035),
  RIGHT_HIP(0.09),
  RIGHT_KNEE(0.055),
  RIGHT_ANKLE(0.04),
  RIGHT_HEEL(0.025),
  RIGHT_TOE(0.025),
  LEFT_SHOULDER(0.055),
  LEFT_ELBOW(0.04),
  LEFT_HAND(0.035),
  LEFT_HIP(0.09),
  LEFT_KNEE(0.055),
  LEFT_ANKLE(0.04),
  LEFT_HEEL(0.025),
  LEFT_TOE(0.025);

  private static final Map<String, List<Spot>> BY_NAME = names();

  private final double radius;

  Spot(double radius) {
    this.radius = radius;
  }

  /** Half of the thickness of the body there. */
  double radius() {
    return radius;
  }

  /**
   * The points that a name stands for: {@code left-hand}, {@code hands}, {@code right-foot} for its
   * heel and toe, {@code left-forearm} for elbow and hand; empty if there is no such name.
   */
  static Optional<List<Spot>> named(String name) {
    return Optional.ofNullable(BY_NAME.get(name));
  }

  private static Map<String, List<Spot>> names() {
    Map<String, List<Spot>> names = new LinkedHashMap<>();
    for (Spot spot : values()) {
      names.put(spot.name().toLowerCase(Locale.ROOT).replace('_', '-'), List.of(spot));
    }
    names.put("right-foot", List.of(RIGHT_HEEL, RIGHT_TOE));
    names.put("left-foot", List.of(LEFT_HEEL, LEFT_TOE));
    names.put("right-forearm", List.of(RIGHT_ELBOW, RIGHT_HAND));
    names.put("left-forearm", List.of(LEFT_ELBOW, LEFT_HAND));
    pair(names, "feet", "foot");
    pair(names, "forearms", "forearm");
    for (String one : List.of("shoulder", "elbow", "hand", "hip", "knee", "ankle", "heel", "toe")) {
      pair(names, one + "s", one);
    }
    return names;
  }

  private static void pair(Map<String, List<Spot>> names, String both, String one) {
    List<Spot> spots = new ArrayList<>(names.get("right-" + one));
    spots.addAll(names.get("left-" + one));
    names.put(both, List.copyOf(spots));
  }
}
