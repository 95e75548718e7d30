package counterset.ask;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

/** What one day of a week may say otherwise than all days: lengths, level, kinds, targets. */
final class Topics {

  private Topics() {}

  /** The topics of a draft; empty if it says something else as well, or nothing. */
  static Optional<Set<String>> only(AskDraft draft) {
    Set<String> topics = of(draft);
    return topics.isEmpty() || saysMore(draft) ? Optional.empty() : Optional.of(topics);
  }

  /** The topics of a draft. */
  static Set<String> of(AskDraft draft) {
    Set<String> topics = new LinkedHashSet<>();
    add(topics, "minutes", draft.minutes.isSet());
    add(topics, "level", draft.level.isSet());
    add(topics, "perSuperset", draft.perSuperset.isSet());
    add(topics, "rounds", draft.rounds.isSet());
    add(topics, "pairing", draft.pairing.isSet());
    draft.clock.forEach((part, seconds) -> add(topics, part.name(), seconds.isSet()));
    add(topics, "targets", !draft.targets.isEmpty());
    return topics;
  }

  private static void add(Set<String> topics, String topic, boolean said) {
    if (said) {
      topics.add(topic);
    }
  }

  private static boolean saysMore(AskDraft draft) {
    return draft.seed.isSet()
        || draft.noEquipment.isSet()
        || !draft.emphasis.isEmpty()
        || !draft.minSets.isEmpty()
        || !draft.removed.isEmpty()
        || !draft.equipment.isEmpty()
        || !draft.withoutEquipment.isEmpty()
        || !draft.limitations.isEmpty()
        || !draft.tracks.isEmpty()
        || !draft.include.isEmpty()
        || !draft.exclude.isEmpty()
        || !draft.likes.isEmpty()
        || !draft.dislikes.isEmpty()
        || !draft.kept.isEmpty()
        || !draft.faults().isEmpty();
  }
}
