package counterset.catalogue;

import java.util.Map;

/**
 * What a region or muscle group wants.
 *
 * @param shares parts of 100 of the places by movement pattern
 */
record PatternShares(String id, Map<String, Integer> shares) {}
