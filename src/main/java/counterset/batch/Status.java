package counterset.batch;

import counterset.model.Identified;

/** What came of a file. */
public enum Status implements Identified {
  PLANNED("planned"),
  INFEASIBLE("infeasible"),
  BROKEN("broken"),
  FAILED("failed");

  private final String id;

  Status(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
