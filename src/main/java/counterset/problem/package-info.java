/**
 * Problem files, week files and plan files to model values, and back.
 *
 * <p>A problem is read in two passes: the schema and all rules over references and contradictions
 * first, with every fault and its place; then, if there is none, the values. A session of a week is
 * read as the problem that it makes together with what is shared. May depend on {@code
 * counterset.model}, {@code counterset.catalogue}, {@code counterset.json} and Jackson.
 */
package counterset.problem;
