package counterset.model;

/** What the exercises of a superset are to each other. */
public enum SupersetKind implements Identified {
  /** Opposing muscle groups of the same joint action. */
  AGONIST_ANTAGONIST("agonist-antagonist"),
  /** Upper with lower body, front with back of a segment, or knee-dominant with hip-dominant. */
  OPPOSITE_REGION("opposite-region"),
  /** The same muscle group twice. */
  COMPOUND("compound"),
  /** One exercise, one side and then the other. */
  UNILATERAL("unilateral"),
  /** None of these. */
  MIXED("mixed");

  private final String id;

  SupersetKind(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
