package counterset.search;

import counterset.model.Problem;
import java.util.function.Consumer;

/**
 * One thing that could be asked for otherwise.
 *
 * @param topic what it is about; of changes of one topic the first that helps is the smallest, and
 *     two of them never go together
 * @param phrase what the coach would do, to follow {@code What would free it:}
 * @param edit does it
 */
record Change(String topic, String phrase, Consumer<ProblemDraft> edit) {

  Problem applyTo(Problem problem) {
    ProblemDraft draft = new ProblemDraft(problem);
    edit.accept(draft);
    return draft.problem();
  }
}
