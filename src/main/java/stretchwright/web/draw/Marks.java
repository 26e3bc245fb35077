package stretchwright.web.draw;

import stretchwright.ground.Point;

/**
 * The four marks: tick, ring, cross, tacked ring. Always beside a word that says the same, so hidden from readers of
 * pages; a mark alone tells nothing.
 */
public enum Marks {
    /** Holds, or done. */
    HOLDS("class=\"mark holds\""),
    /** Look here. */
    LOOK("class=\"mark look\""),
    /** Stop. */
    STOP("class=\"mark stop\""),
    /** In work. */
    WORKS("class=\"mark works\"");

    private static final String TICK = "M7 24C10.5 27 14.5 32 17.5 38.5C21.5 27 29.5 15 40 7.5";
    private static final String RING =
            "M30 6.5C20 2.5 8.5 8.5 6 19.5C3.5 31.5 12.5 41 24 40.5C35.5 40 42 30.5 40.5 20.5C38.5 9.5 25.5 4 14 10";
    private static final String CROSS = "M8.5 9C17 16.5 28.5 27.5 37.5 38.5M38 8C29.5 16 18 27 8 38";
    private static final String TACKED = "M23 5.5A17.5 17.5 0 1 1 22.9 5.5";

    private final String attribute;

    Marks(String attribute) {
        this.attribute = attribute;
    }

    private String way() {
        return switch (this) {
            case HOLDS -> TICK;
            case LOOK -> RING;
            case STOP -> CROSS;
            case WORKS -> TACKED;
        };
    }

    /** To stand in a line of words. */
    public String svg() {
        return "<svg " + attribute + " viewBox=\"0 0 46 46\" aria-hidden=\"true\"><path d=\"" + way() + "\"/></svg>";
    }

    /** The ring round a place in a drawing of the same px, as broad and high as it needs to be. */
    public static String ringAt(double x, double y, double across, double high) {
        Pen pen = Pen.px(0);
        pen.ring(new Point(x, -y), across, high);
        return pen.drawn();
    }
}
