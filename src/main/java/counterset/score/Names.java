package counterset.score;

import counterset.model.Exercise;
import counterset.model.Problem;
import counterset.model.Superset;
import java.util.Collection;

/** What a coach calls the things that matches are about. */
public interface Names {

  /** The muscle group, equipment or exercise of an id; the id itself if there is none. */
  String of(String id);

  /** Muscle groups within a sentence. */
  String muscles(Collection<String> ids);

  /** Equipment of a problem within a sentence: {@code the loop band}. */
  String item(String equipment, Problem problem);

  /** What an exercise needs and the client does not have; empty text if nothing. */
  String missing(Exercise exercise, Problem problem);

  /** Those limitations that an exercise goes against, each with what does; empty text if none. */
  String broken(Exercise exercise, Collection<String> limitations);

  /** What a superset trains: {@code front and back of the upper arm}. */
  String trained(Superset superset);

  /** What a superset is: {@code a pair for front and back of the upper arm}. */
  String pairing(Superset superset);
}
