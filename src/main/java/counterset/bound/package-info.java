/**
 * How good a session could be at best: an upper limit on its soft score, proved without a search.
 *
 * <p>The method is Lagrangian relaxation (Held and Karp 1971, from memory): what ties distant
 * places of a session together is priced instead of enforced, and what remains is a longest path
 * from place to place. Every set of prices gives a valid limit; better prices give a lower one. All
 * limits are worked out in scaled whole numbers, so no rounding can make one invalid.
 */
package counterset.bound;
