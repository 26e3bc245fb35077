package stretchwright.print;

import java.util.List;

/**
 * The kinds of line and lettering. They differ in width and dash, so they can be told apart in grey.
 *
 * <p>Widths and dashes in mm; grey 0 is black, 1 is white. Our own choice: 0.5 mm is seen at arm's length, 0.12 mm is
 * the least an office printer draws unbroken (from memory).
 */
enum Ink {
    CUT("cut-line", 0.5, 0, "solid, thick"),
    SEW("sew-line", 0.25, 0, "dashed", 5.0, 2.5),
    FOLD("fold", 0.35, 0, "long and short dashes", 12.0, 2.0, 3.0, 2.0),
    NOTCH("notch", 0.5, 0, "short ticks inwards from the cut line"),
    GRAIN("grain", 0.35, 0, "thin, with arrow heads"),
    MARK("mark", 0.25, 0.2, "dotted", 0.8, 1.8),
    LABEL("label", 0.2, 0, ""),
    FAINT("note", 0.12, 0.45, ""),
    SQUARE("test-square", 0.12, 0.55, ""),
    TRIM("trim-line", 0.15, 0.3, "hair line"),
    JOIN("join-line", 0.15, 0.3, "hair line, dashed", 2.0, 2.0),
    DIAMOND("join-mark", 0.25, 0.2, "halves meet across a join"),
    CLOTH("cloth", 0.35, 0.2, "");

    private final String cssClass;
    private final double width;
    private final double grey;
    private final String looks;
    private final List<Double> dashes;

    Ink(String cssClass, double width, double grey, String looks, Double... dashes) {
        this.cssClass = cssClass;
        this.width = width;
        this.grey = grey;
        this.looks = looks;
        this.dashes = List.of(dashes);
    }

    String cssClass() {
        return cssClass;
    }

    double width() {
        return width;
    }

    double grey() {
        return grey;
    }

    /** In words, for the legend. */
    String looks() {
        return looks;
    }

    List<Double> dashes() {
        return dashes;
    }
}
