/**
 * The exact referee: the objective of a session a second time, as a mixed-integer model for the
 * CP-SAT solver of OR-Tools, which proves the optimum of small problems and bounds that of large
 * ones.
 *
 * <p>It shares the records of the model, the numbers of the constraint weights and what an exercise
 * is worth to a client by itself ({@link counterset.score.Merit}) with the program, and no
 * arithmetic: what a session is charged is stated here once more, every constraint of it. The
 * tracks of a class are outside its scope: it judges the main session alone.
 */
package counterset.referee;
