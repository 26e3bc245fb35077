package stretchwright.web.draw;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.ground.Point;
import stretchwright.ground.Voice;

/** What is seen from the side: the way between the legs, stature, and the foot. */
final class TapeLengths {
    private static final double POINTED = 26;

    private TapeLengths() {}

    static String stature(Body body, TapeFigure.Window window, Voice voice) {
        SideFigure figure = new SideFigure(body);
        double tall = body.mm(Measure.STATURE);
        double wall = Math.max(
                0.09 * tall, Math.max(figure.back(figure.hip()), figure.foot().heel()) + 2);
        Pen pen = window.pen(0.02 * tall, 0.45 * tall);
        TapeHeights.floor(pen, 0.17 * tall);
        pen.line(Look.TICK, new Point(wall, 0), new Point(wall, 1.02 * tall));
        new UpperSide(figure).draw(pen);
        figure.details(pen, 0, figure.top());
        box(pen, -0.055 * tall, tall, wall, tall * 1.026);
        double x = wall + pen.mm(16);
        pen.line(Look.LEVEL, new Point(wall, tall), new Point(x, tall));
        pen.read(new Point(x, 0), new Point(x, tall));
        pen.words(Look.LETTERS, new Point(-0.065 * tall, tall), Pen.Side.END, voice.say(Tell.said("word.book")));
        pen.words(
                Look.LETTERS,
                new Point(x + pen.mm(14), 0.62 * tall),
                Pen.Side.START,
                voice.say(Tell.said("word.wall")));
        return pen.drawn();
    }

    static String crotch(Body body, TapeFigure.Window window, Voice voice, boolean whole) {
        SideFigure figure = new SideFigure(body);
        double waist = body.mm(Measure.WAIST_HEIGHT);
        double middle = (figure.front(figure.hip()) + figure.back(figure.hip())) / 2;
        Pen pen = window.pen(middle, 2.4 * figure.back(figure.hip()) - 2.4 * figure.front(figure.hip()));
        figure.draw(pen, window.low(), window.high());
        double off = pen.mm(5);
        Point front = new Point(figure.front(waist) - off, waist);
        Point back = new Point(figure.back(waist) + off, waist);
        pen.line(Look.RIBBON, front, back);
        CrotchWay way = new CrotchWay(figure, off);
        if (whole) {
            pen.curve(Look.TAPE, way.front());
            pen.curve(Look.TAPE_HIDDEN, way.between());
            pen.dot(Look.DOT, front, 6);
        } else {
            pen.curve(Look.PENCILLED, way.front());
            pen.curve(Look.PENCILLED, way.between());
            pen.curve(Look.TAPE_HIDDEN, way.behind());
            weight(pen, way.lowest());
            pen.dot(Look.DOT, way.lowest(), 6);
        }
        pen.curve(Look.TAPE, way.back());
        pen.dot(Look.DOT, back, 6);
        pen.words(
                Look.LETTERS,
                back.plus(new Point(pen.mm(12), -pen.mm(5))),
                Pen.Side.START,
                voice.say(Tell.said("word.ribbon")));
        return pen.drawn();
    }

    /** A key on a loop, which finds the lowest point. */
    private static void weight(Pen pen, Point from) {
        double u = pen.mm(1);
        Point ring = from.plus(new Point(0, -34 * u));
        pen.line(Look.TICK, from, ring.plus(new Point(0, 7 * u)));
        pen.dot(Look.TOOL, ring, 7);
        Point shaft = ring.plus(new Point(0, -7 * u));
        pen.line(Look.TICK, shaft, shaft.plus(new Point(0, -22 * u)), shaft.plus(new Point(7 * u, -22 * u)));
        pen.line(Look.TICK, shaft.plus(new Point(0, -15 * u)), shaft.plus(new Point(6 * u, -15 * u)));
    }

    /** Bare foot, toes pointed. */
    static String heel(Body body, TapeFigure.Window window) {
        SideFigure figure = new SideFigure(body);
        SideFoot foot = figure.foot();
        Point pivot = new Point(0, foot.bone());
        Pen pen = window.pen((foot.heel() + foot.toe()) / 2, foot.length() * 1.5);
        double cut = figure.ankle() * 1.08;
        double high = window.high();
        List<Point> all = new ArrayList<>(figure.fronts(high, cut));
        foot.pointed().forEach(p -> all.add(turned(p, pivot)));
        all.add(new Point(figure.back(figure.ankle()) + 0.004 * foot.length(), 1.24 * figure.ankle()));
        all.addAll(figure.backs(figure.ankle() * 1.75, high));
        pen.curve(Look.BODY, all);
        pen.circle(Look.THIN, pivot, 0.035 * foot.length());
        Point tip = turned(foot.heelTip(), pivot);
        Point bend = turned(foot.bend(), pivot);
        Point along = tip.minus(bend);
        Point side = along.left().times(0.10);
        pen.curve(Look.TAPE_HIDDEN, bend, bend.towards(tip, 0.5).minus(side), tip);
        pen.curve(Look.TAPE, bend, bend.towards(tip, 0.5).plus(side), tip);
        pen.dot(Look.DOT, bend, 6);
        pen.dot(Look.DOT, tip, 6);
        return pen.drawn();
    }

    private static Point turned(Point p, Point pivot) {
        return pivot.plus(p.minus(pivot).turned(POINTED));
    }

    /** On paper, heel against the wall, a pencil upright before the longest toe. */
    static String foot(Body body, TapeFigure.Window window, Voice voice) {
        SideFigure figure = new SideFigure(body);
        SideFoot foot = figure.foot();
        double middle = (foot.heel() + foot.toe()) / 2;
        Pen pen = window.pen(middle, foot.length() * 1.5);
        double toe = foot.toe();
        double heel = foot.heel();
        figure.draw(pen, window.low(), window.high());
        box(pen, toe - pen.mm(40), -pen.mm(4), heel, 0);
        pen.line(Look.TICK, new Point(heel + pen.mm(1), -pen.mm(4)), new Point(heel + pen.mm(1), foot.bone() * 2.4));
        pencil(pen, toe, foot.bone() * 1.9);
        pen.read(new Point(toe, -pen.mm(18)), new Point(heel, -pen.mm(18)));
        pen.words(
                Look.LETTERS,
                new Point(toe - pen.mm(15), foot.bone() * 1.2),
                Pen.Side.END,
                voice.say(Tell.said("word.pencil")));
        pen.words(
                Look.LETTERS,
                new Point(heel + pen.mm(10), foot.bone() * 1.9),
                Pen.Side.START,
                voice.say(Tell.said("word.wall")));
        return pen.drawn();
    }

    private static void pencil(Pen pen, double toe, double high) {
        double wide = pen.mm(5);
        pen.line(
                Look.TOOL,
                List.of(
                        new Point(toe - wide, 0),
                        new Point(toe - 2 * wide, 3 * wide),
                        new Point(toe - 2 * wide, high),
                        new Point(toe, high),
                        new Point(toe, 3 * wide)),
                true);
    }

    private static void box(Pen pen, double left, double low, double right, double high) {
        pen.line(
                Look.TOOL,
                List.of(new Point(left, low), new Point(right, low), new Point(right, high), new Point(left, high)),
                true);
    }
}
