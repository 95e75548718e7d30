package counterset.bound;

/**
 * A diagram that tells more paths apart.
 *
 * @param accept to be run if it is used
 */
record Grown(Diagram diagram, Runnable accept) {}
