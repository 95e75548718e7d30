/**
 * What follows from a journal: session load, monotony and strain, weekly sets, energy, and the next
 * load to lift.
 *
 * <p>Arithmetic over entries; every formula and every range names its source where it stands.
 * Masses in kilograms, loads of sessions in arbitrary units (RPE x minutes). May depend on {@code
 * counterset.journal} and {@code counterset.model}.
 */
package counterset.training;
