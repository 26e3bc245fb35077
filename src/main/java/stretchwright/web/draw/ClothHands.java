package stretchwright.web.draw;

import java.util.List;
import stretchwright.ground.Point;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;

/** Hands at a cloth: what each test asks them to do. One form; a test fills a phone's width. */
public enum ClothHands {
    FOLD,
    HANGING,
    WRAP,
    SHOW_THROUGH,
    WASH;

    private static final double WIDTH = 390;
    private static final double HEIGHT = 280;

    public Drawing drawing(Voice voice) {
        Pen pen = Pen.px(HEIGHT);
        switch (this) {
            case FOLD -> fold(pen, voice);
            case HANGING -> hanging(pen, voice);
            case WRAP -> wrap(pen, voice);
            case SHOW_THROUGH -> showThrough(pen);
            case WASH -> wash(pen, voice);
        }
        return new Drawing(voice.say(title()), voice.say(described()), WIDTH, HEIGHT, pen.drawn());
    }

    private Said title() {
        return switch (this) {
            case FOLD -> Tell.said("hands.fold");
            case HANGING -> Tell.said("hands.hanging");
            case WRAP -> Tell.said("hands.wrap");
            case SHOW_THROUGH -> Tell.said("hands.show-through");
            case WASH -> Tell.said("hands.wash");
        };
    }

    private Said described() {
        return switch (this) {
            case FOLD -> Tell.said("hands.fold.drawn");
            case HANGING -> Tell.said("hands.hanging.drawn");
            case WRAP -> Tell.said("hands.wrap.drawn");
            case SHOW_THROUGH -> Tell.said("hands.show-through.drawn");
            case WASH -> Tell.said("hands.wash.drawn");
        };
    }

    private static Point p(double x, double y) {
        return new Point(x, y);
    }

    private static void box(Pen pen, Look look, double left, double low, double right, double high) {
        pen.line(look, List.of(p(left, low), p(right, low), p(right, high), p(left, high)), true);
    }

    /** A pin with its head. */
    private static void pin(Pen pen, Point foot, double high) {
        pen.line(Look.TICK, foot, foot.plus(p(0, high)));
        pen.dot(Look.DOT, foot.plus(p(0, high)), 4);
    }

    /** A rule below the fold: 0 under the left pin; the right one is pulled beyond the 100 it marked. */
    private static void fold(Pen pen, Voice voice) {
        box(pen, Look.TOOL, 108, 40, 378, 76);
        for (int i = 0; i <= 24; i++) {
            pen.line(Look.THIN, p(124 + 10 * i, 76), p(124 + 10 * i, i % 5 == 0 ? 64 : 70));
        }
        pen.words(Look.LETTERS, p(124, 47), Pen.Side.MIDDLE, "0");
        pen.words(Look.LETTERS, p(224, 47), Pen.Side.MIDDLE, "100");
        pen.words(Look.PENCIL_LETTERS, p(370, 47), Pen.Side.END, voice.say(Tell.said("word.mm")));
        List<Point> folded = List.of(p(76, 84), p(124, 80), p(195, 79), p(274, 80), p(322, 84));
        pen.runs(
                Look.CLOTH_INSIDE,
                List.of(folded, List.of(p(330, 164), p(262, 148), p(195, 145), p(130, 148), p(66, 164))));
        pen.runs(Look.CLOTH, List.of(folded, List.of(p(326, 134), p(262, 122), p(195, 119), p(130, 122), p(70, 134))));
        pen.line(Look.PENCILLED, p(224, 78), p(224, 190));
        pin(pen, p(124, 72), 40);
        pin(pen, p(274, 72), 40);
        Hand.left(pen, p(114, 98), 22);
        Hand.right(pen, p(284, 98), 22);
        pen.arrow(Look.MOVE, p(224, 202), p(250, 206), p(278, 202));
    }

    /** A strip under a shelf with two marks and a bottle; a hand holds a rule beside the marks. */
    private static void hanging(Pen pen, Voice voice) {
        box(pen, Look.TOOL, 60, 256, 250, 268);
        box(pen, Look.CLOTH, 118, 96, 150, 250);
        box(pen, Look.TOOL, 112, 244, 156, 258);
        box(pen, Look.TOOL, 112, 90, 156, 102);
        pen.line(Look.TICK, p(134, 90), p(134, 76));
        pen.runs(
                Look.TOOL,
                List.of(
                        List.of(p(128, 76), p(128, 66), p(112, 54), p(112, 12)),
                        List.of(p(156, 12), p(156, 54), p(140, 66), p(140, 76))));
        pen.curve(Look.THIN, p(112, 42), p(123, 45), p(134, 42), p(145, 39), p(156, 42));
        for (double y : new double[] {134, 212}) {
            pen.line(Look.TAPE, p(118, y), p(150, y));
        }
        box(pen, Look.TOOL, 168, 118, 190, 236);
        for (int i = 0; i <= 11; i++) {
            pen.line(Look.THIN, p(168, 122 + 10 * i), p(i % 5 == 0 ? 180 : 175, 122 + 10 * i));
        }
        pen.line(Look.LEVEL, p(150, 134), p(168, 134));
        pen.line(Look.LEVEL, p(150, 212), p(168, 212));
        Hand.right(pen, p(186, 168), -8);
        pen.arrow(Look.MOVE, p(84, 80), p(84, 56), p(84, 26));
        pen.words(Look.LETTERS, p(168, 26), Pen.Side.START, voice.say(Tell.said("word.weight")));
    }

    /** Round the fullest part of the hip, pinned in front. */
    private static void wrap(Pen pen, Voice voice) {
        FrontFigure figure = new FrontFigure(UsualFigure.of(stretchwright.body.Figure.WOMAN), 0);
        double hip = figure.body().mm(stretchwright.body.Measure.HIP_HEIGHT);
        Pen body = pen.of(p(150, 138 - 0.5 * hip), 0.5);
        figure.draw(body, hip - 255, hip + 245);
        double across = figure.outer(hip) + 6;
        body.runs(
                Look.CLOTH,
                List.of(
                        band(figure, hip + 75, -1, across),
                        List.of(p(across - 8, hip + 72), p(across, hip), p(across - 4, hip - 78)),
                        band(figure, hip - 75, 1, across),
                        List.of(p(-across + 4, hip - 78), p(-across, hip), p(-across + 8, hip + 72))));
        body.runs(
                Look.CLOTH_INSIDE,
                List.of(List.of(
                        p(52, hip + 50),
                        p(92, hip + 72),
                        p(100, hip),
                        p(92, hip - 112),
                        p(52, hip - 98),
                        p(60, hip - 20))));
        for (double y : new double[] {40, -20, -80}) {
            body.line(Look.TICK, p(40, hip + y - 8), p(68, hip + y - 14));
            body.dot(Look.DOT, p(68, hip + y - 14), 4);
        }
        Hand.right(pen, p(200, 146), 14);
        pen.arrow(Look.MOVE, p(216, 190), p(236, 196), p(258, 192));
        pen.words(Look.LETTERS, p(270, 92), Pen.Side.START, voice.say(Tell.said("word.pin")));
        pen.line(Look.THIN, p(266, 97), p(188, 112));
    }

    private static List<Point> band(FrontFigure figure, double height, int way, double across) {
        double half = across - 6;
        return List.of(
                p(way * half, height),
                p(way * half * 0.5, height - 22),
                p(0, height - 28),
                p(-way * half * 0.5, height - 22),
                p(-way * half, height));
    }

    /** Cloth held stretched both ways over bars until they are seen through it. */
    private static void showThrough(Pen pen) {
        box(pen, Look.TOOL, 128, 40, 262, 214);
        for (int i = 0; i < 7; i++) {
            double x = 138 + 19 * i;
            pen.line(Look.RIBBON, p(x, 40), p(x, 214));
        }
        pen.runs(
                Look.CLOTH_INSIDE,
                List.of(
                        List.of(p(104, 58), p(150, 70), p(240, 70), p(286, 58)),
                        List.of(p(278, 96), p(278, 156), p(286, 194)),
                        List.of(p(240, 182), p(150, 182), p(104, 194)),
                        List.of(p(112, 156), p(112, 96))));
        for (int i = 0; i < 7; i++) {
            double x = 138 + 19 * i;
            pen.line(Look.PENCILLED, p(x, 72), p(x, 180));
        }
        box(pen, Look.TAPE, 158, 92, 232, 160);
        Hand.left(pen, p(110, 126), 4);
        Hand.right(pen, p(280, 126), 4);
        pen.arrow(Look.MOVE, p(106, 196), p(84, 196), p(60, 196));
        pen.arrow(Look.MOVE, p(284, 196), p(306, 196), p(330, 196));
        pen.arrow(Look.MOVE, p(195, 222), p(195, 240), p(195, 264));
        pen.arrow(Look.MOVE, p(195, 34), p(195, 22), p(195, 8));
    }

    /** A marked square before and after, between them the water. */
    private static void wash(Pen pen, Voice voice) {
        box(pen, Look.CLOTH_INSIDE, 14, 78, 144, 226);
        box(pen, Look.TAPE, 34, 102, 124, 202);
        pen.words(Look.LETTERS, p(79, 48), Pen.Side.MIDDLE, voice.say(Tell.said("word.before")));
        pen.curve(Look.THIN, p(158, 168), p(168, 176), p(178, 168), p(188, 160), p(198, 168), p(208, 176), p(218, 168));
        pen.curve(Look.THIN, p(158, 184), p(168, 192), p(178, 184), p(188, 176), p(198, 184), p(208, 192), p(218, 184));
        pen.arrow(Look.MOVE, p(158, 142), p(188, 146), p(220, 142));
        box(pen, Look.CLOTH_INSIDE, 240, 86, 366, 222);
        box(pen, Look.PENCILLED, 256, 104, 346, 204);
        box(pen, Look.TAPE, 260, 110, 342, 198);
        box(pen, Look.TOOL, 250, 74, 356, 94);
        for (int i = 0; i <= 9; i++) {
            pen.line(Look.THIN, p(260 + 10 * i, 94), p(260 + 10 * i, i % 5 == 0 ? 84 : 88));
        }
        pen.words(Look.LETTERS, p(303, 48), Pen.Side.MIDDLE, voice.say(Tell.said("word.washed")));
    }
}
