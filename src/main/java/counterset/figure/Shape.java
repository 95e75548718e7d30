package counterset.figure;

import java.util.List;

/**
 * A stroke of the drawing with round ends.
 *
 * @param look what it is a stroke of, as the style sheet calls it
 * @param width in hundredths of a metre
 * @param closed whether it ends where it begins and is filled
 * @param nearness to the eye
 */
record Shape(Look look, double width, boolean closed, List<Dot> dots, double nearness) {

  Shape {
    dots = List.copyOf(dots);
  }

  /** What a stroke shows. */
  enum Look {
    /** A limb on the side of the eye, the trunk and the head. */
    NEAR("near"),
    /** What only stands out from a limb or the head. */
    NOSE("near"),
    /** A limb on the far side. */
    FAR("far"),
    /** Something to hold or to wear. */
    ITEM("item"),
    /** A band. */
    BAND("band"),
    /** Something that carries the body. */
    THING("thing"),
    /** The floor. */
    FLOOR("floor");

    private final String id;

    Look(String id) {
      this.id = id;
    }

    /** Its class in the style sheet. */
    String id() {
      return id;
    }

    /** Whether it is set off from what is behind it. */
    boolean isSetOff() {
      return this == NEAR || this == FAR || this == ITEM;
    }
  }
}
