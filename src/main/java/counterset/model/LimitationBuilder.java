package counterset.model;

import java.util.List;
import java.util.Map;
import java.util.Set;

/** Makes limitations. Lists, sets and maps that are not set are empty; the others must be set. */
public final class LimitationBuilder {

  private String id;
  private String name;
  private List<String> names = List.of();
  private Map<Joint, Integer> maxDemand = Map.of();
  private Set<String> avoidTraits = Set.of();
  private Set<Position> avoidPositions = Set.of();
  private Set<String> favours = Set.of();
  private String caution;
  private String source;
  private List<Rule> rules = List.of();

  LimitationBuilder() {}

  LimitationBuilder(Limitation limitation) {
    id = limitation.id();
    name = limitation.name();
    names = limitation.names();
    maxDemand = limitation.maxDemand();
    avoidTraits = limitation.avoidTraits();
    avoidPositions = limitation.avoidPositions();
    favours = limitation.favours();
    caution = limitation.caution();
    source = limitation.source();
    rules = limitation.rules();
  }

  public LimitationBuilder id(String value) {
    id = value;
    return this;
  }

  public LimitationBuilder name(String value) {
    name = value;
    return this;
  }

  public LimitationBuilder names(List<String> value) {
    names = value;
    return this;
  }

  public LimitationBuilder maxDemand(Map<Joint, Integer> value) {
    maxDemand = value;
    return this;
  }

  public LimitationBuilder avoidTraits(Set<String> value) {
    avoidTraits = value;
    return this;
  }

  public LimitationBuilder avoidPositions(Set<Position> value) {
    avoidPositions = value;
    return this;
  }

  public LimitationBuilder favours(Set<String> value) {
    favours = value;
    return this;
  }

  public LimitationBuilder caution(String value) {
    caution = value;
    return this;
  }

  public LimitationBuilder source(String value) {
    source = value;
    return this;
  }

  public LimitationBuilder rules(List<Rule> value) {
    rules = value;
    return this;
  }

  /** The limitation, checked. */
  public Limitation build() {
    return new Limitation(
        id, name, names, maxDemand, avoidTraits, avoidPositions, favours, caution, source, rules);
  }
}
