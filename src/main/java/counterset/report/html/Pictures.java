package counterset.report.html;

import counterset.model.Exercise;
import java.util.Optional;

/**
 * Pictures of exercises as SVG to stand in a page, each with a text alternative of its own. They
 * have no ids, load nothing and bring no {@code style} attributes, which the page's policy forbids.
 */
public interface Pictures {

  /** No pictures at all; a page is whole without. */
  Pictures NONE =
      new Pictures() {
        @Override
        public Optional<String> still(Exercise exercise) {
          return Optional.empty();
        }

        @Override
        public Optional<String> moving(Exercise exercise) {
          return Optional.empty();
        }
      };

  /** The start and the end of a movement. */
  Optional<String> still(Exercise exercise);

  /** The movement, again and again; not shown to those who want less motion. */
  Optional<String> moving(Exercise exercise);

  /** The style sheet of the pictures. */
  default String styles() {
    return "";
  }
}
