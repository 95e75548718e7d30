package counterset.cli;

import counterset.report.text.Detail;
import picocli.CommandLine.Option;

/** How long a run sheet is. */
final class DetailOption {

  @Option(
      names = "--long",
      description =
          "A run sheet with all cues, what is said in each rest and the parts of the score.")
  private boolean isLong;

  Detail detail() {
    return isLong ? Detail.FULL : Detail.BRIEF;
  }
}
