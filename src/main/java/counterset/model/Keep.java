package counterset.model;

/** A wish that an exercise stays where it is. */
public record Keep(At at, String exercise) {}
