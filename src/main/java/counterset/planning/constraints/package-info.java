/**
 * The constraints of a session as constraint streams: the specification that the search, the
 * explanation and the tests are held to. {@link counterset.planning.constraints.SessionConstraint}
 * is their catalogue.
 *
 * <p>Depends on {@code planning}, {@code model}, {@code timeline} and Timefold.
 */
package counterset.planning.constraints;
