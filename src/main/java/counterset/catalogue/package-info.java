/**
 * The catalogue: loading, joining, reference integrity, queries and gaps.
 *
 * <p>The embedded catalogue is trusted, because the tests validate it, and read as fast as
 * possible. Directories of a user are validated by the schemas first; then all references are
 * checked, and all faults are reported together. May depend on {@code counterset.model}, {@code
 * counterset.json} and Jackson.
 */
package counterset.catalogue;
