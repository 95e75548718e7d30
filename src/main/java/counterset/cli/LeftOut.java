package counterset.cli;

import counterset.journal.Reading;

/** Tells of lines of a journal that were not read. */
final class LeftOut {

  private LeftOut() {}

  static void say(Shell shell, String file, Reading reading) {
    for (int line : reading.leftOut()) {
      shell.say(file + ":" + line + ": The line was cut short and is left out.");
    }
  }
}
