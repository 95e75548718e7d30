package counterset.ask;

/** What an ask may be silent about although a session needs it. */
public enum AskTopic {
  MINUTES,
  TARGETS,
  EQUIPMENT,
  ROUNDS,
  COOL_DOWN
}
