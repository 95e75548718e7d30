/**
 * The nouns of the trade as immutable values: exercises, equipment, limitations, problems, sessions
 * and plans.
 *
 * <p>Constructors refuse values that can never be right, so that the rest of the program need not
 * ask again. Times are whole seconds, masses are kilograms. Depends on nothing but the JDK.
 */
package counterset.model;
