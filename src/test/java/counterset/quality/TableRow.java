package counterset.quality;

/** A request with two sessions for it. */
record TableRow(Mapped mapped, Judged reference, Judged plan) {

  /** Sessions of different length are compared by so many places, as 20 minutes have. */
  private static final double PLACES = 16;

  double ofReference(String constraint) {
    return scaled(reference, reference.points().of(constraint));
  }

  double ofPlan(String constraint) {
    return scaled(plan, plan.points().of(constraint));
  }

  private static double scaled(Judged session, double points) {
    return points * PLACES / Math.max(1, session.places().size());
  }
}
