package counterset.score;

import java.util.Optional;

/** A constraint of which it is told what came and what went; of the others only a total is told. */
public interface MatchByMatch {

  /** What a match means, as a clause. */
  String said(Told told);

  /** What it means that a match came, as a clause. */
  default String came(Told told) {
    return said(told);
  }

  /** What it means that a match went, as a clause. */
  String went(Told told);

  /**
   * One that came and one that went as one clause, where the two differ by degree only.
   *
   * @param now the name of the exercise that came
   * @param before the name of the exercise that went
   */
  default Optional<String> became(String now, String before, boolean better) {
    return Optional.empty();
  }

  /** Whether it can be told that a part of a match came or went. */
  default boolean tellsParts() {
    return true;
  }

  /** Whether it is told in the order of the session; else what went comes first. */
  default boolean isToldInOrder() {
    return false;
  }
}
