/**
 * Draws the figures of the catalogue: joint angles become a body ({@code Skeleton}), the body is
 * made to stand where it says it stands ({@code Fit}), and one routine draws it ({@code Drawing}).
 *
 * <p>Lengths are in metres of a person of 1.70 m, angles in degrees. The axes are x to the front of
 * the figure in its first upright stance, y up from the floor, z to its right. All arithmetic is
 * {@code StrictMath} or plain, so that a drawing has the same bytes everywhere. May depend on
 * {@code counterset.model}.
 */
package counterset.figure;
