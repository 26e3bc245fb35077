package stretchwright.web.draw;

import java.util.ArrayList;
import java.util.List;
import stretchwright.boot.Boot;
import stretchwright.ground.Point;

/**
 * A laced boot from outside, in mm, its ankle bone at 0, 0 and its toe to the left. Collar, sole and length follow the
 * boot's tape measures; the run of the shell between them was drawn after boots of 245 mm (free drawing, no source).
 */
final class BootShape {
    private static final double USUAL_SOLE_HEELED = 132;
    private static final double USUAL_SOLE_FLAT = 84;

    private final BootKind kind;
    private final double top;
    private final double sole;
    private final double size;
    private final double collar;

    BootShape(BootKind kind, Boot boot) {
        this.kind = kind;
        this.top = Math.max(35, boot.ankleToTop());
        this.size = boot.heelGirth() / (kind.heeled() ? 400 : 380);
        this.sole = boot.sole().ankleToSole().orElse(size * (kind.heeled() ? USUAL_SOLE_HEELED : USUAL_SOLE_FLAT));
        this.collar = 1.10 * boot.topGirth() / Math.PI;
    }

    /** A boot as it usually is, to show how one is measured. */
    static Boot usual(BootKind kind) {
        double top = kind == BootKind.HOCKEY ? 300 : kind == BootKind.INLINE ? 310 : 285;
        return new Boot(
                kind.name(),
                top,
                kind.heeled() ? 400 : 380,
                370,
                kind.heeled() ? 60 : 36,
                85,
                false,
                Boot.Dressing.LEG_FIRST);
    }

    BootKind kind() {
        return kind;
    }

    double top() {
        return top;
    }

    /** Lower edge of sole and heel block; negative. */
    double sole() {
        return -sole;
    }

    double size() {
        return size;
    }

    private Point on(double x, double y) {
        return new Point(x * size, y * size);
    }

    /** So far above the sole's lower edge. */
    private Point over(double x, double y) {
        return new Point(x * size, y * size - sole);
    }

    double toe() {
        return -205 * size;
    }

    double heel() {
        return (kind.heeled() ? 63 : 66) * size;
    }

    Point collarFront() {
        return new Point(-0.49 * collar, top);
    }

    Point collarBack() {
        return new Point(0.51 * collar, top + (kind == BootKind.HOCKEY ? 30 : 6) * size);
    }

    /** Where a loop round heel and instep lies in front. */
    Point instep() {
        return on(-70, -4);
    }

    Point heelTip() {
        return over(kind.heeled() ? 60 : 63, kind.heeled() ? 54 : 12);
    }

    /** Collar to the toe, over tongue and laces. */
    private List<Point> front() {
        return List.of(
                collarFront(),
                new Point(collarFront().x() - 2 * size, 0.62 * top),
                on(-56, 22),
                instep(),
                on(-95, -28),
                over(-128, kind.heeled() ? 84 : 60),
                over(-160, kind.heeled() ? 74 : 54),
                over(-187, kind.heeled() ? 62 : 46),
                over(-203, kind.heeled() ? 42 : 30),
                over(-204, kind.heeled() ? 24 : 14));
    }

    /** Heel to the collar. */
    private List<Point> back() {
        double low = kind.heeled() ? 52 : 8;
        double lift = kind.heeled() ? 0 : 0.35 * sole / size - 20;
        return List.of(
                over(57, low),
                over(63, low + 18),
                over(62, low + 42 + lift),
                on(50, 4),
                new Point(Math.max(45 * size, 0.44 * collar), 0.5 * top),
                collarBack());
    }

    private List<Point> welt() {
        return kind.heeled()
                ? List.of(over(-204, 24), over(-190, 15), over(-95, 13), over(-55, 32), over(-15, 46), over(57, 52))
                : List.of(over(-204, 14), over(-190, 8), over(-90, 5), over(-10, 8), over(57, 8));
    }

    private List<Point> collarLine() {
        Point back = collarBack();
        Point front = collarFront();
        return kind == BootKind.HOCKEY
                ? List.of(
                        back,
                        back.plus(new Point(-6 * size, 1)),
                        new Point(0.30 * collar, top + 2),
                        new Point(0, top - 4 * size),
                        front)
                : List.of(back, new Point(0.1 * collar, top - 3 * size), front);
    }

    /** @param tongue whether it stands out of the collar, as it does where no cloth lies over it */
    void shell(Pen pen, boolean tongue) {
        if (tongue) {
            tongue(pen);
        }
        pen.runs(Look.BODY, List.of(front(), welt(), back(), collarLine()));
        laces(pen);
        sole(pen);
    }

    private void tongue(Pen pen) {
        List<Point> tongue = List.of(
                collarFront().plus(new Point(9 * size, -8 * size)),
                collarFront().plus(new Point(2 * size, 22 * size)),
                collarFront().plus(new Point(-13 * size, 22 * size)),
                new Point(collarFront().x() - 10 * size, 0.55 * top));
        pen.runs(Look.BODY, List.of(tongue));
    }

    /** The upper edge of the throat, eyelets, and laces over the tongue. */
    private void laces(Pen pen) {
        List<Point> throat = List.of(
                collarFront().plus(new Point(17 * size, 0)),
                new Point(collarFront().x() + 14 * size, 0.6 * top),
                on(-42, 14),
                on(-57, -14),
                on(-88, -42),
                over(-118, kind.heeled() ? 74 : 50));
        pen.curve(Look.THIN, throat);
        List<Point> edge = front().subList(0, 6);
        List<Point> outer = Smooth.sampled(edge, 6);
        List<Point> inner = Smooth.sampled(throat, 6);
        for (int i = 2; i < 30; i += 4) {
            pen.line(Look.THIN, inner.get(i), outer.get(Math.min(outer.size() - 1, i + 2)));
        }
    }

    private void sole(Pen pen) {
        if (kind.heeled()) {
            List<Point> under = List.of(
                    over(-204, 24),
                    over(-202, 10),
                    over(-182, 0),
                    over(-92, 0),
                    over(-78, 8),
                    over(-45, 28),
                    over(-12, 40));
            List<Point> block = List.of(over(-12, 40), over(-8, 0), over(54, 0), over(57, 52));
            List<Point> welt = new ArrayList<>(Smooth.reversed(welt()));
            pen.runs(Look.BODY, List.of(under, block.subList(0, 2), block.subList(2, 4), welt));
        } else {
            pen.runs(
                    Look.BODY,
                    List.of(
                            List.of(
                                    over(-204, 14),
                                    over(-198, 2),
                                    over(-186, 0),
                                    over(-90, -1),
                                    over(50, 0),
                                    over(57, 8)),
                            Smooth.reversed(welt())));
        }
    }

    /** What cloth over it hides, in pencil: the collar, and the shell down to the hem. */
    void hidden(Pen pen, double frontHem, double backHem) {
        pen.curve(Look.PENCILLED, collarLine());
        List<Point> before = Smooth.sampled(front(), 8).stream()
                .filter(p -> p.y() > frontHem + 2)
                .toList();
        List<Point> behind = Smooth.sampled(back(), 8).stream()
                .filter(p -> p.y() > backHem + 2)
                .toList();
        if (before.size() > 1 && behind.size() > 1) {
            pen.line(Look.PENCILLED, before, false);
            pen.line(Look.PENCILLED, behind, false);
        }
    }

    /** How wide the boot is seen at a height: front and back, for a tape round it. */
    double frontAt(double height) {
        return across(front(), height);
    }

    double backAt(double height) {
        return across(back(), height);
    }

    private static double across(List<Point> run, double height) {
        List<Point> all = Smooth.sampled(run, 8);
        for (int i = 1; i < all.size(); i++) {
            Point a = all.get(i - 1);
            Point b = all.get(i);
            if ((a.y() - height) * (b.y() - height) <= 0 && a.y() != b.y()) {
                return a.towards(b, (height - a.y()) / (b.y() - a.y())).x();
            }
        }
        Point first = all.get(0);
        Point last = all.get(all.size() - 1);
        return Math.abs(first.y() - height) < Math.abs(last.y() - height) ? first.x() : last.x();
    }
}
