package stretchwright.web.draw;

import java.util.List;
import stretchwright.boot.Boot;
import stretchwright.ground.Point;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;

/**
 * The laced boot from the side, and where the tape goes on it; guards are on a blade while it is measured. One form for
 * desk and phone: a boot is as broad as high, so that it fills both.
 */
public final class Boots {
    private static final double WIDTH = 390;
    private static final double HEIGHT = 360;
    private static final double EDGE = 12;
    /** How much higher a hem lies on the instep than behind, mm (free drawing, no source). */
    private static final double SLOPE = 26;

    private final BootKind kind;
    private final BootShape shape;
    private final BootUnder under;
    private final Boot boot;
    private final Voice voice;
    private final Pen pen;

    private Boots(BootKind kind, Voice voice) {
        this.kind = kind;
        this.boot = BootShape.usual(kind);
        this.shape = new BootShape(kind, boot);
        this.under = new BootUnder(shape);
        this.voice = voice;
        double high = shape.top() + 46 - under.ground() + 14;
        double scale = Math.min((HEIGHT - 2 * EDGE) / high, 1.0);
        double left = Math.min(under.front(), shape.toe()) - 16;
        this.pen = new Pen(new Point(EDGE - scale * left, EDGE + scale * (shape.top() + 46)), scale);
    }

    /** The boot alone. */
    public static Drawing of(BootKind kind, Voice voice) {
        Boots boots = new Boots(kind, voice);
        boots.drawn(false);
        return new Drawing(voice.say(title(kind)), voice.say(described(kind)), WIDTH, HEIGHT, boots.pen.drawn());
    }

    public static Drawing of(BootMeasure measure, BootKind kind, Voice voice) {
        if (measure.fromBelow()) {
            return BootSole.of(measure, kind, voice);
        }
        Boots boots = new Boots(kind, voice);
        boots.drawn(true);
        boots.measured(measure);
        Said on = kind.wheeled() ? measure.drawn() : measure.drawn().and(Tell.said("boot.guards-on"));
        return new Drawing(
                voice.say(Tell.said("tape.title", measure.title())), voice.say(on), WIDTH, HEIGHT, boots.pen.drawn());
    }

    private static Said title(BootKind kind) {
        return switch (kind) {
            case FIGURE -> Tell.said("kind.figure");
            case ROLLER -> Tell.said("kind.roller");
            case HOCKEY -> Tell.said("kind.hockey");
            case INLINE -> Tell.said("kind.inline");
        };
    }

    private static Said described(BootKind kind) {
        return switch (kind) {
            case FIGURE -> Tell.said("kind.figure.drawn");
            case ROLLER -> Tell.said("kind.roller.drawn");
            case HOCKEY -> Tell.said("kind.hockey.drawn");
            case INLINE -> Tell.said("kind.inline.drawn");
        };
    }

    private void drawn(boolean guard) {
        under.draw(pen, guard);
        shape.shell(pen, true);
    }

    private void measured(BootMeasure measure) {
        switch (measure) {
            case TOP_GIRTH -> loop(shape.collarFront(), shape.collarBack());
            case HEM_GIRTH -> {
                double hem = -boot.ankleToHem();
                loop(new Point(shape.frontAt(hem + SLOPE), hem + SLOPE), new Point(shape.backAt(hem), hem));
                bone();
            }
            case HEEL_GIRTH -> loop(shape.instep(), shape.heelTip());
            case GUARD_GIRTH -> loop(shape.instep(), under.guardHeel());
            case ANKLE_TO_HEM -> down(-boot.ankleToHem(), true);
            case ANKLE_TO_TOP -> down(shape.top() - 3, false);
            case ANKLE_TO_SOLE -> down(shape.sole(), false);
            case SOLE_LENGTH -> along(shape.toe(), shape.heel() - 6, shape.sole());
            case MOUNT_GAP -> along(under.gapFrom(), under.gapTo(), shape.sole() - 14);
            case PLATE -> along(under.front(), under.rear(), under.ground() - 2);
            case SOLE_WIDTH, ARCH_WIDTH -> throw new IllegalStateException(measure.path());
        }
    }

    /** Round the boot, its near half in front. */
    private void loop(Point front, Point back) {
        Point side = back.minus(front).left().times(0.09);
        Point middle = front.towards(back, 0.5);
        pen.curve(Look.TAPE_HIDDEN, front, middle.plus(side), back);
        pen.curve(Look.TAPE, front, middle.minus(side), back);
        pen.dot(Look.DOT, front, 6);
        pen.dot(Look.DOT, back, 6);
    }

    private void bone() {
        double r = 9;
        pen.circle(Look.THIN, Point.ORIGIN, r);
    }

    private void down(double to, boolean hem) {
        bone();
        if (hem) {
            pen.curve(
                    Look.SEAM,
                    new Point(shape.frontAt(to + SLOPE), to + SLOPE),
                    new Point((shape.frontAt(to) + shape.backAt(to)) / 2, to + 2),
                    new Point(shape.backAt(to), to));
            pen.words(
                    Look.LETTERS,
                    new Point(shape.backAt(to) + 10, to - 4),
                    Pen.Side.START,
                    voice.say(Tell.said("word.hem")));
        }
        pen.words(Look.LETTERS, new Point(-140, 66), Pen.Side.MIDDLE, voice.say(Tell.said("word.ankle-bone")));
        pen.line(Look.THIN, new Point(-104, 60), new Point(-12, 5));
        pen.read(Point.ORIGIN, new Point(0, to));
    }

    private void along(double from, double to, double height) {
        for (double end : List.of(from, to)) {
            pen.line(Look.LEVEL, new Point(end, height + 24), new Point(end, height - 8));
        }
        pen.read(new Point(from, height - 8), new Point(to, height - 8));
    }
}
