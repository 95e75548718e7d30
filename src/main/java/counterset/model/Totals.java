package counterset.model;

/**
 * A plan in figures.
 *
 * @param seconds from the first to the last
 * @param unusedSeconds left of the cap
 * @param workSeconds seconds of work intervals
 * @param restSeconds seconds of rests
 * @param supersets filled supersets
 * @param exercises different exercises in them
 * @param positions filled positions
 * @param loadedPositions those that use equipment of the client
 * @param itemsHandled items taken up or put away between exercises
 * @param changeoverSeconds seconds of all changeovers
 * @param floorTrips times that one goes down to the floor or gets up
 */
public record Totals(
    int seconds,
    int unusedSeconds,
    int workSeconds,
    int restSeconds,
    int supersets,
    int exercises,
    int positions,
    int loadedPositions,
    int itemsHandled,
    int changeoverSeconds,
    int floorTrips) {}
