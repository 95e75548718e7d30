package counterset.score;

/** Every superset that the clock has room for is filled; a unit is a superset with a hole. */
public final class SupersetEmpty extends SupersetConstraint {

  SupersetEmpty() {
    super(
        "supersetEmpty",
        Level.MEDIUM,
        1,
        "Every superset that the clock has room for is filled.",
        "per superset with a hole");
  }

  @Override
  void measure(Group superset, Matches matches) {
    if (!superset.isFull()) {
      matches.match(1, 0, Sink.NOWHERE);
    }
  }
}
