package counterset.report.html;

import java.util.List;

/**
 * Intervals of the run sheet that belong together: the warm-up, a round of a superset with the rest
 * after it.
 *
 * @param about what its exercises are to each other; empty text if there is nothing to say
 */
record Block(String kind, String time, String title, String about, List<Row> rows) {}
