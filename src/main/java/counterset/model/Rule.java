package counterset.model;

/**
 * One rule of a limitation in words, and what it rests on.
 *
 * @param rule one plain sentence
 * @param source the study, guideline or custom that it comes from
 * @param status how well the source is known
 */
public record Rule(String rule, String source, Status status) {

  /** How a rule is known. */
  public enum Status implements Identified {
    /** Seen in the paper, guideline or standard itself. */
    PRIMARY("primary"),
    /** Seen in a secondary source that agrees with it. */
    SECONDARY("secondary"),
    /** From memory, not checked against the source. */
    MEMORY("memory"),
    /** Computed from a stated formula. */
    COMPUTED("computed"),
    /** A custom of the trade without a source. */
    COMMON_PRACTICE("common-practice");

    private final String id;

    Status(String id) {
      this.id = id;
    }

    @Override
    public String id() {
      return id;
    }
  }
}
