package counterset.timeline;

import counterset.model.Position;

/**
 * What matters of an exercise for a changeover, compiled for speed.
 *
 * @param needs the items that it needs, as bits of a {@link Kit}
 * @param keeps the items that may stay in use: those that it needs, and worn ones that it allows
 */
public record Handling(long needs, long keeps, Position position) {}
