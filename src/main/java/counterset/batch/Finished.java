package counterset.batch;

/**
 * A file that need not be done again as long as nothing that went into it changes.
 *
 * @param fingerprint of all that went into it
 */
public record Finished(String fingerprint, Outcome outcome) {}
