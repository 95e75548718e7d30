/**
 * Problem files and plan files to model values, and back.
 *
 * <p>A problem is read in two passes: the schema and all rules over references and contradictions
 * first, with every fault and its place; then, if there is none, the values. May depend on {@code
 * counterset.model}, {@code counterset.catalogue}, {@code counterset.json} and Jackson.
 */
package counterset.problem;
