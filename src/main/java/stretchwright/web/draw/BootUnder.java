package stretchwright.web.draw;

import java.util.List;
import stretchwright.ground.Point;

/** What stands under a boot: blade, wheels, and the guard over a blade. In mm, as {@link BootShape} has it. */
final class BootUnder {
    private final BootShape boot;
    private final double size;
    private final double sole;

    BootUnder(BootShape boot) {
        this.boot = boot;
        this.size = boot.size();
        this.sole = boot.sole();
    }

    /** So far below the sole. */
    private Point below(double x, double y) {
        return new Point(x * size, sole - y * size);
    }

    /** The lowest point of it, guard included. */
    double ground() {
        return below(
                        0,
                        switch (boot.kind()) {
                            case FIGURE -> 66;
                            case HOCKEY -> 72;
                            case ROLLER -> 88;
                            case INLINE -> 102;
                        })
                .y();
    }

    /** Plate, blade or frame, end to end. */
    double front() {
        return size
                * switch (boot.kind()) {
                    case FIGURE -> -212;
                    case HOCKEY -> -206;
                    case ROLLER -> -196;
                    case INLINE -> -222;
                };
    }

    double rear() {
        return size
                * switch (boot.kind()) {
                    case FIGURE -> 74;
                    case HOCKEY -> 76;
                    case ROLLER -> 54;
                    case INLINE -> 104;
                };
    }

    /** The free length between the front mount and the rear one. */
    double gapFrom() {
        return size * (boot.kind() == BootKind.ROLLER ? -96 : -84);
    }

    double gapTo() {
        return size * (boot.kind() == BootKind.ROLLER ? -34 : -10);
    }

    Point guardHeel() {
        return boot.kind().wheeled() ? new Point(rear(), ground() + 14 * size) : new Point(rear(), ground() + 6 * size);
    }

    void draw(Pen pen, boolean guard) {
        switch (boot.kind()) {
            case FIGURE -> figure(pen);
            case HOCKEY -> hockey(pen);
            case ROLLER -> roller(pen);
            case INLINE -> inline(pen);
        }
        if (guard && !boot.kind().wheeled()) {
            guard(pen);
        }
    }

    private void figure(Pen pen) {
        pen.line(Look.BODY, List.of(below(-184, 0), below(-88, 0), below(-88, 5), below(-184, 5)), true);
        pen.line(Look.BODY, List.of(below(-9, 0), below(55, 0), below(55, 5), below(-9, 5)), true);
        stanchion(pen, -170, -146, 42);
        stanchion(pen, -118, -96, 42);
        stanchion(pen, 8, 36, 42);
        pen.runs(
                Look.BODY,
                List.of(
                        List.of(below(-208, 33), below(-190, 40), below(-60, 42), below(74, 42)),
                        List.of(below(74, 42), below(72, 50), below(10, 57), below(-90, 58), below(-172, 55)),
                        List.of(below(-180, 59), below(-184, 53)),
                        List.of(below(-192, 56), below(-195, 49)),
                        List.of(below(-203, 51), below(-205, 44)),
                        List.of(below(-212, 44), below(-208, 33))));
    }

    private void stanchion(Pen pen, double from, double to, double down) {
        double middle = (from + to) / 2;
        double half = (to - from) / 2;
        pen.runs(
                Look.BODY,
                List.of(
                        List.of(below(from, 5), below(middle - 0.55 * half, 18), below(from, down)),
                        List.of(below(to, down), below(middle + 0.55 * half, 18), below(to, 5))));
    }

    private void hockey(Pen pen) {
        pen.runs(
                Look.BODY,
                List.of(
                        List.of(below(-186, 0), below(-176, 18), below(-190, 34), below(-200, 42)),
                        List.of(below(70, 42), below(58, 30), below(52, 12), below(52, 0)),
                        List.of(below(-12, 0), below(-20, 14), below(-46, 24), below(-74, 14), below(-82, 0))));
        pen.runs(
                Look.BODY,
                List.of(
                        List.of(below(-206, 38), below(-196, 42), below(66, 42), below(76, 38)),
                        List.of(
                                below(76, 38),
                                below(70, 54),
                                below(46, 63),
                                below(-65, 65),
                                below(-176, 63),
                                below(-200, 54),
                                below(-206, 38))));
    }

    private void roller(Pen pen) {
        pen.line(Look.BODY, List.of(below(-190, 0), below(54, 0), below(54, 8), below(-190, 8)), true);
        for (double x : new double[] {-134, 22}) {
            pen.runs(
                    Look.BODY,
                    List.of(
                            List.of(below(x - 36, 8), below(x - 18, 30), below(x - 6, 48)),
                            List.of(below(x + 10, 48), below(x + 18, 28), below(x + 26, 8))));
            wheel(pen, Look.THIN, x + 7, 56, 29);
            wheel(pen, Look.TOOL, x, 57, 30);
        }
        pen.line(Look.BODY, List.of(below(-188, 8), below(-200, 34), below(-190, 38), below(-172, 8)), true);
        pen.runs(
                Look.TOOL,
                List.of(
                        List.of(below(-212, 36), below(-198, 32), below(-182, 42)),
                        List.of(below(-186, 58), below(-196, 62), below(-206, 58))));
    }

    private void wheel(Pen pen, Look look, double x, double y, double radius) {
        pen.circle(look, below(x, y), radius * size);
        if (look == Look.TOOL) {
            pen.circle(Look.THIN, below(x, y), 0.55 * radius * size);
            pen.circle(Look.THIN, below(x, y), 0.2 * radius * size);
        }
    }

    private void inline(Pen pen) {
        for (double x : new double[] {-182, -101, -20, 61}) {
            wheel(pen, Look.TOOL, x, 62, 39);
        }
        pen.runs(
                Look.BODY,
                List.of(
                        List.of(below(-180, 0), below(-186, 20), below(-204, 56)),
                        List.of(below(-196, 68), below(-140, 44), below(-101, 68), below(-60, 44), below(-20, 68)),
                        List.of(below(18, 44), below(61, 68), below(84, 62)),
                        List.of(below(74, 40), below(52, 22), below(48, 0)),
                        List.of(below(-20, 0), below(-50, 14), below(-80, 14), below(-100, 0))));
        for (double x : new double[] {-182, -101, -20, 61}) {
            pen.circle(Look.THIN, below(x, 62), 6 * size);
        }
    }

    /** A trough over the edge, closed in front and behind, held by a spring. */
    private void guard(Pen pen) {
        double up = boot.kind() == BootKind.FIGURE ? 46 : 50;
        pen.runs(
                Look.TOOL,
                List.of(
                        List.of(
                                new Point(front() - 9 * size, below(0, up - 10).y()),
                                new Point(front() - 3 * size, below(0, up).y()),
                                new Point(
                                        (front() + rear()) / 2, below(0, up + 1).y()),
                                new Point(rear() - 3 * size, below(0, up).y()),
                                new Point(rear() + 7 * size, below(0, up - 6).y())),
                        List.of(
                                new Point(rear() + 9 * size, ground() + 9 * size),
                                new Point(rear() - 4 * size, ground()),
                                new Point((front() + rear()) / 2, ground() - size),
                                new Point(front() + 10 * size, ground()),
                                new Point(front() - 12 * size, ground() + 16 * size))));
        for (double x = front() + 40 * size; x < rear() - 20 * size; x += 34 * size) {
            pen.line(Look.THIN, new Point(x, ground() + 5 * size), new Point(x + 16 * size, ground() + 5 * size));
        }
    }
}
