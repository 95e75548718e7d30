package counterset.report.html;

/** A name and what goes with it. */
record Line(String name, String text) {}
