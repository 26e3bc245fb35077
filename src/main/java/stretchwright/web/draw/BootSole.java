package stretchwright.web.draw;

import java.util.List;
import stretchwright.ground.Point;
import stretchwright.ground.Voice;

/** The sole of a boot from below, toe to the left, with what is mounted on it as a faint outline. */
final class BootSole {
    private static final double WIDTH = 390;
    private static final double HEIGHT = 220;

    private BootSole() {}

    static Drawing of(BootMeasure measure, BootKind kind, Voice voice) {
        Pen pen = new Pen(new Point(264, 110), 1.15);
        outline(pen);
        if (kind.heeled()) {
            pen.curve(Look.THIN, new Point(-16, 30), new Point(-8, 0), new Point(-16, -28));
        }
        mounted(pen, kind);
        boolean arch = measure == BootMeasure.ARCH_WIDTH;
        double x = arch ? -52 : -146;
        Point up = new Point(x, arch ? 29 : 48);
        Point down = new Point(x, arch ? -25 : -44);
        pen.read(up, down);
        return new Drawing(
                voice.say(Tell.said("tape.title", measure.title())),
                voice.say(measure.drawn()),
                WIDTH,
                HEIGHT,
                pen.drawn());
    }

    private static void outline(Pen pen) {
        pen.shape(
                Look.BODY,
                List.of(
                        new Point(-206, -2),
                        new Point(-196, 30),
                        new Point(-150, 48),
                        new Point(-118, 46),
                        new Point(-60, 30),
                        new Point(-20, 30),
                        new Point(30, 33),
                        new Point(60, 20),
                        new Point(66, 0),
                        new Point(60, -20),
                        new Point(30, -32),
                        new Point(-30, -27),
                        new Point(-70, -24),
                        new Point(-110, -38),
                        new Point(-150, -44),
                        new Point(-192, -30)));
    }

    private static void mounted(Pen pen, BootKind kind) {
        if (kind == BootKind.ROLLER) {
            for (double x : new double[] {-134, 22}) {
                for (double y : new double[] {-38, 38}) {
                    pen.line(
                            Look.THIN,
                            List.of(
                                    new Point(x - 30, y - 16),
                                    new Point(x + 30, y - 16),
                                    new Point(x + 30, y + 16),
                                    new Point(x - 30, y + 16)),
                            true);
                }
                pen.line(Look.THIN, new Point(x, -22), new Point(x, 22));
            }
            return;
        }
        double half = kind == BootKind.INLINE ? 12 : 2;
        double reach = kind == BootKind.INLINE ? 100 : 74;
        pen.line(
                Look.THIN,
                List.of(new Point(-212, -half), new Point(reach, -half), new Point(reach, half), new Point(-212, half)),
                true);
    }
}
