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
        box(pen, Look.TOOL, 84, 40, 372, 76);
        for (int i = 0; i <= 26; i++) {
            pen.line(Look.THIN, p(104 + 10 * i, 76), p(104 + 10 * i, i % 5 == 0 ? 64 : 70));
        }
        pen.words(Look.LETTERS, p(104, 47), Pen.Side.MIDDLE, "0");
        pen.words(Look.LETTERS, p(204, 47), Pen.Side.MIDDLE, "100");
        pen.words(Look.PENCIL_LETTERS, p(362, 47), Pen.Side.END, voice.say(Tell.said("word.mm")));
        pen.runs(Look.CLOTH_INSIDE, List.of(
                List.of(p(60, 84), p(104, 80), p(180, 80), p(264, 80), p(330, 84)),
                List.of(p(338, 160), p(260, 146), p(180, 144), p(110, 146), p(52, 160))));
        pen.runs(Look.CLOTH, List.of(
                List.of(p(60, 84), p(104, 80), p(180, 80), p(264, 80), p(330, 84)),
                List.of(p(334, 132), p(260, 122), p(180, 120), p(110, 122), p(54, 132))));
        pen.line(Look.PENCILLED, p(204, 78), p(204, 190));
        pin(pen, p(104, 72), 40);
        pin(pen, p(264, 72), 40);
        Hand.left(pen, p(96, 98), 22);
        Hand.right(pen, p(272, 98), 22);
        pen.arrow(Look.MOVE, p(204, 200), p(234, 204), p(264, 200));
    }

    /** A strip under a shelf with two marks and a bottle; a hand holds a rule beside the marks. */
    private static void hanging(Pen pen, Voice voice) {
        box(pen, Look.TOOL, 60, 256, 250, 268);
        box(pen, Look.CLOTH, 118, 96, 150, 250);
        box(pen, Look.TOOL, 112, 244, 156, 258);
        box(pen, Look.TOOL, 112, 90, 156, 102);
        pen.line(Look.TICK, p(134, 90), p(134, 76));
        pen.runs(Look.TOOL, List.of(
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
        Pen body = new Pen(new Point(150, 132 + 0.5 * hip), 0.5);
        figure.draw(body, hip - 250, hip + 230);
        double across = figure.outer(hip) + 6;
        body.runs(Look.CLOTH, List.of(
                band(figure, hip + 75, -1, across),
                List.of(p(across - 8, hip + 72), p(across, hip), p(across - 4, hip - 78)),
                band(figure, hip - 75, 1, across),
                List.of(p(-across + 4, hip - 78), p(-across, hip), p(-across + 8, hip + 72))));
        body.runs(Look.CLOTH_INSIDE, List.of(List.of(
                p(52, hip + 50), p(92, hip + 72), p(100, hip), p(92, hip - 112), p(52, hip - 98), p(60, hip - 20))));
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
        box(pen, Look.TOOL, 106, 46, 284, 236);
        for (int i = 0; i < 9; i++) {
            double x = 116 + 19 * i;
            pen.line(Look.RIBBON, p(x, 46), p(x, 236));
        }
        pen.runs(Look.CLOTH_INSIDE, List.of(
                List.of(p(80, 72), p(140, 84), p(250, 84), p(310, 72)),
                List.of(p(302, 110), p(302, 170), p(310, 208)),
                List.of(p(250, 198), p(140, 198), p(80, 208)),
                List.of(p(88, 170), p(88, 110))));
        for (int i = 0; i < 9; i++) {
            double x = 116 + 19 * i;
            pen.line(Look.PENCILLED, p(x, 86), p(x, 196));
        }
        box(pen, Look.TAPE, 158, 106, 232, 176);
        Hand.left(pen, p(84, 140), 4);
        Hand.right(pen, p(306, 140), 4);
        pen.arrow(Look.MOVE, p(118, 22), p(94, 22), p(66, 22));
        pen.arrow(Look.MOVE, p(272, 22), p(296, 22), p(324, 22));
        pen.arrow(Look.MOVE, p(195, 206), p(195, 226), p(195, 262));
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
