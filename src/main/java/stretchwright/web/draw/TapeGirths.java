package stretchwright.web.draw;

import stretchwright.body.Body;
import stretchwright.body.GirthProfile;
import stretchwright.body.Measure;
import stretchwright.ground.Point;
import stretchwright.ground.Voice;

/** Girths from the front: the tape as a level loop, dotted where it goes round behind. */
final class TapeGirths {
    /** How flat the loop is seen, from a little above. */
    private static final double FLAT = 0.15;

    private TapeGirths() {}

    static String of(Measure measure, Body body, TapeFigure.Window window, Voice voice) {
        FrontFigure figure = new FrontFigure(body, 0);
        double wide = 2 * figure.widest(window.low(), window.high()) * 1.45;
        Pen pen = window.pen(0, wide, measure == Measure.MID_THIGH_GIRTH ? 50 : measure == Measure.KNEE_GIRTH ? 0 : 40);
        double low = window.low();
        double floor = low < 0 ? low : low - pen.mm(0);
        figure.draw(pen, floor, window.high());
        double height = height(measure, body);
        boolean trunk = measure == Measure.WAIST_GIRTH || measure == Measure.HIP_GIRTH;
        if (measure == Measure.WAIST_GIRTH) {
            pen.line(Look.RIBBON, new Point(-figure.outer(height), height), new Point(figure.outer(height), height));
            label(pen, new Point(figure.outer(height) + pen.mm(14), height), voice.say(Tell.said("word.ribbon")));
        }
        if (measure == Measure.MID_THIGH_GIRTH) {
            halfway(pen, figure, height, voice);
        }
        if (measure == Measure.CALF_GIRTH || measure == Measure.HIP_GIRTH) {
            label(pen, new Point(figure.outer(height) + pen.mm(14), height), voice.say(Tell.said("word.fullest")));
        }
        if (measure == Measure.ANKLE_GIRTH) {
            label(pen, new Point(figure.outer(height) + pen.mm(14), height), voice.say(Tell.said("word.thinnest")));
        }
        double from = trunk ? -figure.outer(height) : figure.inner(height);
        round(pen, from, figure.outer(height), height);
        return pen.drawn();
    }

    static void round(Pen pen, double from, double to, double height) {
        double across = (to - from) / 2 + pen.mm(2);
        Point middle = new Point((from + to) / 2, height);
        pen.round(middle, across, Math.min(FLAT * across, pen.mm(17)));
        pen.dot(Look.DOT, middle.plus(new Point(0, -Math.min(FLAT * across, pen.mm(17)))), 6);
    }

    private static void label(Pen pen, Point at, String word) {
        pen.words(Look.LETTERS, at.plus(new Point(0, -pen.mm(5))), Pen.Side.START, word);
    }

    static double height(Measure measure, Body body) {
        return switch (measure) {
            case WAIST_GIRTH, WAIST_HEIGHT -> body.mm(Measure.WAIST_HEIGHT);
            case HIP_GIRTH, HIP_HEIGHT -> body.mm(Measure.HIP_HEIGHT);
            case THIGH_GIRTH -> GirthProfile.furrow(body);
            case MID_THIGH_GIRTH -> (body.mm(Measure.CROTCH_HEIGHT) + body.mm(Measure.KNEE_HEIGHT)) / 2;
            case KNEE_GIRTH, KNEE_HEIGHT -> body.mm(Measure.KNEE_HEIGHT);
            case CALF_GIRTH, CALF_HEIGHT -> body.mm(Measure.CALF_HEIGHT);
            case ANKLE_GIRTH, ANKLE_HEIGHT -> body.mm(Measure.ANKLE_HEIGHT);
            default -> body.mm(measure);
        };
    }

    /** Crotch and middle of the kneecap, and the same way from the tape to both. */
    private static void halfway(Pen pen, FrontFigure figure, double height, Voice voice) {
        double crotch = figure.body().mm(Measure.CROTCH_HEIGHT);
        double knee = figure.body().mm(Measure.KNEE_HEIGHT);
        double x = figure.outer(crotch) + pen.mm(24);
        for (double end : new double[] {crotch, height, knee}) {
            pen.line(Look.LEVEL, new Point(figure.inner(end), end), new Point(x + pen.mm(8), end));
            pen.line(Look.TICK, new Point(x - pen.mm(6), end), new Point(x + pen.mm(6), end));
        }
        pen.line(Look.TICK, new Point(x, crotch), new Point(x, knee));
        label(pen, new Point(x + pen.mm(14), height), voice.say(Tell.said("word.halfway")));
    }
}
