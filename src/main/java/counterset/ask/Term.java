package counterset.ask;

/** What a name stands for: the id of something in the catalogue, or of the language's own. */
record Term(Kind kind, String id, String name) {}
