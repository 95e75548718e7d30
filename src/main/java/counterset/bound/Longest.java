package counterset.bound;

/** Where the longest path of a session is looked for. */
interface Longest {

  /** The scaled points of the longest path; below {@code Arcs.NEVER / 2} if there is none. */
  int longest(Prices prices);

  /** What the longest path last found consists of. */
  Tour tour(Prices prices);
}
