package counterset.model;

/**
 * How good any session of a problem can be that breaks no rule and meets as many of the wishes.
 *
 * @param soft no such session has more soft points than this
 */
public record Bound(int soft) {}
