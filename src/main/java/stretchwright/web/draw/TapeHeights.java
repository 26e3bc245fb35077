package stretchwright.web.draw;

import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.ground.Point;
import stretchwright.ground.Voice;

/** Heights: a rule stands on the floor, a dotted line leads from it to the level. */
final class TapeHeights {
    private TapeHeights() {}

    static String beside(Measure measure, Body body, TapeFigure.Window window, Voice voice) {
        FrontFigure figure = new FrontFigure(body, 0);
        double height = TapeGirths.height(measure, body);
        double widest = figure.widest(window.low(), window.high());
        Pen pen = window.pen(0, 2 * widest * 1.5);
        floor(pen, widest + pen.mm(52));
        figure.draw(pen, window.low(), window.high());
        double x = -widest - pen.mm(34);
        rule(pen, x, Math.min(height * 1.04, window.high()));
        double to = -figure.inner(height);
        pen.line(Look.LEVEL, new Point(x, height), new Point(to, height));
        if (measure == Measure.WAIST_HEIGHT) {
            pen.line(Look.RIBBON, new Point(-figure.outer(height), height), new Point(figure.outer(height), height));
            pen.words(
                    Look.LETTERS,
                    new Point(figure.outer(height) + pen.mm(10), height - pen.mm(5)),
                    Pen.Side.START,
                    voice.say(Tell.said("word.ribbon")));
        } else if (measure == Measure.KNEE_HEIGHT) {
            pen.dot(Look.DOT, new Point(-(figure.outer(height) + figure.inner(height)) / 2, height), 5);
        } else {
            double from = measure == Measure.HIP_HEIGHT ? figure.outer(height) : -figure.inner(height);
            TapeGirths.round(pen, -figure.outer(height), from, height);
        }
        pen.read(new Point(x, 0), new Point(x, height));
        return pen.drawn();
    }

    static String innerLeg(Body body, TapeFigure.Window window, Voice voice) {
        double crotch = body.mm(Measure.CROTCH_HEIGHT);
        FrontFigure figure = new FrontFigure(body, 0.045 * crotch);
        double widest = figure.outer(body.mm(Measure.HIP_HEIGHT));
        Pen pen = window.pen(0, 2 * widest * 1.5);
        floor(pen, widest * 1.45);
        figure.draw(pen, window.low(), window.high());
        double half = Math.max(pen.mm(7), 0.012 * crotch);
        double long_ = 0.22 * crotch;
        pen.line(
                Look.TOOL,
                List.of(
                        new Point(-half, crotch),
                        new Point(half, crotch),
                        new Point(half, crotch - long_),
                        new Point(-half, crotch - long_)),
                true);
        pen.words(
                Look.LETTERS,
                new Point(figure.outer(crotch - long_) + pen.mm(14), crotch - long_ / 2),
                Pen.Side.START,
                voice.say(Tell.said("word.book")));
        pen.line(
                Look.THIN,
                new Point(half + pen.mm(3), crotch - long_ / 2 + pen.mm(5)),
                new Point(figure.outer(crotch - long_) + pen.mm(10), crotch - long_ / 2 + pen.mm(5)));
        pen.read(new Point(0, 0), new Point(0, crotch));
        return pen.drawn();
    }

    /** The outer ankle bone, from the side. */
    static String bone(Body body, TapeFigure.Window window, Voice voice) {
        SideFigure figure = new SideFigure(body);
        SideFoot foot = figure.foot();
        Pen pen = window.pen((foot.heel() + foot.toe()) / 2, foot.length() * 1.7);
        floor(pen, 0.8 * foot.length(), (foot.heel() + foot.toe()) / 2);
        figure.draw(pen, window.low(), window.high());
        double x = foot.heel() + pen.mm(30);
        rule(pen, x, foot.bone() * 2.2);
        pen.line(Look.LEVEL, new Point(x, foot.bone()), new Point(0, foot.bone()));
        pen.dot(Look.DOT, new Point(0, foot.bone()), 5);
        pen.read(new Point(x, 0), new Point(x, foot.bone()));
        pen.words(
                Look.LETTERS,
                new Point(foot.toe() * 0.62, foot.bone() * 1.9),
                Pen.Side.MIDDLE,
                voice.say(Tell.said("word.ankle-bone")));
        pen.line(
                Look.THIN,
                new Point(foot.toe() * 0.45, foot.bone() * 1.8),
                new Point(-pen.mm(9), foot.bone() + pen.mm(3)));
        return pen.drawn();
    }

    static void floor(Pen pen, double half) {
        floor(pen, half, 0);
    }

    static void floor(Pen pen, double half, double middle) {
        pen.line(Look.TICK, new Point(middle - half, -pen.mm(1)), new Point(middle + half, -pen.mm(1)));
    }

    /** A rule that stands on the floor, its ticks towards the figure. */
    static void rule(Pen pen, double x, double high) {
        double wide = pen.mm(14);
        pen.line(
                Look.TOOL,
                List.of(
                        new Point(x - wide / 2, 0),
                        new Point(x + wide / 2, 0),
                        new Point(x + wide / 2, high),
                        new Point(x - wide / 2, high)),
                true);
        double step = pen.mm(16) <= 10 ? 10 : pen.mm(16) <= 50 ? 50 : 100;
        for (double h = step; h < high; h += step) {
            pen.line(Look.THIN, new Point(x - wide / 2, h), new Point(x - wide / 2 + pen.mm(5), h));
        }
    }
}
