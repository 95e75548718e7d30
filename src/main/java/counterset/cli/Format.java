package counterset.cli;

/** How a result is printed on standard output. */
enum Format {
  TEXT,
  JSON
}
