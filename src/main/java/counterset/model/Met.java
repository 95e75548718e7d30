package counterset.model;

/**
 * Energy cost by the Compendium of Physical Activities.
 *
 * @param code the five-digit activity code
 * @param edition the year of the edition, since values differ between editions
 * @param value metabolic equivalents, 1.0 being rest
 */
public record Met(String code, int edition, double value) {}
