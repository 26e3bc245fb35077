package stretchwright.print.kit;

import java.util.List;
import stretchwright.ground.Point;

/**
 * One line of lettering.
 *
 * @param at start, middle or end of the baseline, as align says
 * @param degrees turned counter-clockwise
 * @param size of the letters (em), mm
 */
public record Writing(Ink ink, Point at, double degrees, double size, Align align, String words) {
    public enum Align {
        START,
        MIDDLE,
        END
    }

    public static Writing at(Ink ink, double x, double y, double size, String words) {
        return new Writing(ink, new Point(x, y), 0, size, Align.START, words);
    }

    public static Writing middle(Ink ink, double x, double y, double size, String words) {
        return new Writing(ink, new Point(x, y), 0, size, Align.MIDDLE, words);
    }

    double width() {
        return Letters.width(words, size);
    }

    /** Where the baseline starts. */
    Point start() {
        double back = switch (align) {
            case START -> 0;
            case MIDDLE -> width() / 2;
            case END -> width();
        };
        return at.minus(new Point(back, 0).turned(degrees));
    }

    /** Moved, and turned half round about its own middle where it would stand on its head. */
    Writing carried(Motion motion) {
        double turned = Math.IEEEremainder(degrees + motion.degrees(), 360);
        boolean onItsHead = turned > 91 || turned < -89;
        if (!onItsHead) {
            return new Writing(ink, motion.apply(at), turned, size, align, words);
        }
        Point across = new Point(width(), 0.55 * size).turned(degrees);
        return new Writing(ink, motion.apply(start().plus(across)), turned + 180, size, Align.START, words);
    }

    /** The four corners of the space the letters take, descenders included. */
    public List<Point> outline() {
        Point along = new Point(width(), 0).turned(degrees);
        Point up = new Point(0, 0.8 * size).turned(degrees);
        Point foot = start().plus(new Point(0, -0.25 * size).turned(degrees));
        Point head = start().plus(up);
        return List.of(foot, foot.plus(along), head.plus(along), head);
    }
}
