package counterset.ask;

/** What an ask has said of the week as a whole. Lives for one reading. */
final class WeekDraft {

  final Slot<Integer> sessions = new Slot<>("numbers of sessions");
  final Slot<Boolean> recoveryIsRule = new Slot<>("rules of recovery");

  /** Takes the faults. */
  final AskDraft faults = new AskDraft();
}
