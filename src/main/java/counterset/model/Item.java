package counterset.model;

import java.util.Optional;

/** Equipment as it is handled: another count or load of the same equipment is another item. */
public record Item(Equipment equipment, int count, Optional<Load> load) {}
