package stretchwright.web.draw;

/** What a line means; how it looks stands in the page's style sheet under these classes. */
enum Look {
    /** The wearer, a hand: pencil line, filled with the sheet. */
    BODY("class=\"body\""),
    /** Pencil line without filling. */
    THIN("class=\"thin\""),
    /** The pair, filled with the tint of its cloth. */
    WORN("class=\"worn\""),
    /** A swatch of cloth in the maker's dye. */
    CLOTH("class=\"cloth-out\""),
    /** Its other side. */
    CLOTH_INSIDE("class=\"cloth-in\""),
    /** Estimated, or hidden behind cloth. */
    PENCILLED("class=\"pencilled\""),
    /** Ink line: a rule, a book, a wall. */
    TOOL("class=\"outline tool\""),
    /** Ink line of a tool, unfilled. */
    TICK("class=\"grain\""),
    SEAM("class=\"sew\""),
    RIBBON("class=\"ribbon\""),
    TAPE("class=\"tapeline\""),
    /** Where the tape is hidden: behind, or between the legs. */
    TAPE_HIDDEN("class=\"tapeline between\""),
    DOT("class=\"dot\""),
    LEVEL("class=\"level\""),
    /** What moves: shaft and head of an arrow. */
    MOVE("class=\"arrowhead\""),
    /** The mark "look" at its place in a drawing. */
    RING("class=\"mark look\""),
    LETTERS("class=\"f16\""),
    PENCIL_LETTERS("class=\"lab f16\"");

    private final String attribute;

    Look(String attribute) {
        this.attribute = attribute;
    }

    String attribute() {
        return attribute;
    }
}
