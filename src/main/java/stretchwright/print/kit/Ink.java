package stretchwright.print.kit;

import java.util.List;

/**
 * The kinds of line and lettering. They differ in width and dash, so they can be told apart in grey.
 *
 * <p>Widths and dashes in mm; grey 0 is black, 1 is white. Our own choice: 0.5 mm is seen at arm's length, 0.12 mm is
 * the least an office printer draws unbroken (from memory).
 */
public enum Ink {
    CUT("cut-line", 0.5, 0),
    SEW("sew-line", 0.25, 0, 5.0, 2.5),
    FOLD("fold", 0.35, 0, 12.0, 2.0, 3.0, 2.0),
    NOTCH("notch", 0.5, 0),
    GRAIN("grain", 0.35, 0),
    MARK("mark", 0.25, 0.2, 0.8, 1.8),
    LABEL("label", 0.2, 0),
    FAINT("note", 0.12, 0.45),
    SQUARE("test-square", 0.12, 0.55),
    TRIM("trim-line", 0.15, 0.3),
    JOIN("join-line", 0.15, 0.3, 2.0, 2.0),
    DIAMOND("join-mark", 0.25, 0.2),
    CLOTH("cloth", 0.35, 0.2);

    private final String cssClass;
    private final double width;
    private final double grey;
    private final List<Double> dashes;

    Ink(String cssClass, double width, double grey, Double... dashes) {
        this.cssClass = cssClass;
        this.width = width;
        this.grey = grey;
        this.dashes = List.of(dashes);
    }

    String cssClass() {
        return cssClass;
    }

    public double width() {
        return width;
    }

    double grey() {
        return grey;
    }

    List<Double> dashes() {
        return dashes;
    }
}
