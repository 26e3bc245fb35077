package stretchwright.print.cards;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.Side;
import stretchwright.body.Value;
import stretchwright.ground.Document;
import stretchwright.ground.Part;
import stretchwright.ground.Point;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.SvgCanvas;
import stretchwright.print.kit.Writing;

/**
 * A body from the front and from its left side, to scale 1 : 8, with every measure at its place, so that a slip is
 * seen. In: a body, given and estimated values. Out: one SVG drawing. Widths and depths come from girths by fixed
 * ratios ({@link BodyOutline}): it shows levels and proportions, no likeness.
 */
public final class BodySvg {
    private static final double SCALE = 1.0 / 8;
    private static final double FRONT = 95;
    private static final double SIDE = 190;
    private static final double WIDTH = 262;
    private static final double GROUND = 22;
    private static final double LETTERS = 3;
    private static final double TOP = 14;

    private static final List<Measure> HEIGHTS = List.of(
            Measure.STATURE,
            Measure.WAIST_HEIGHT,
            Measure.HIP_HEIGHT,
            Measure.CROTCH_HEIGHT,
            Measure.KNEE_HEIGHT,
            Measure.CALF_HEIGHT,
            Measure.ANKLE_HEIGHT,
            Measure.ANKLE_BONE_HEIGHT);

    private final Body body;
    private final Unit unit;
    private final BodyOutline outline;
    private final SvgCanvas svg;

    private BodySvg(Body body, String name, Unit unit) {
        this.body = body;
        this.unit = unit;
        this.outline = new BodyOutline(body);
        double height = GROUND + body.mm(Measure.STATURE) * SCALE + TOP;
        this.svg = new SvgCanvas(
                WIDTH, height, name.isEmpty() ? Phrases.of("body.title") : Phrases.of("body.title-of", name));
    }

    public static Document of(Body body, String name, Unit unit) {
        BodySvg drawing = new BodySvg(body, name, unit);
        drawing.figures();
        drawing.heights();
        drawing.girths();
        drawing.lengths();
        drawing.legend();
        return new Document(
                "body.svg", "body drawing", 1, drawing.svg.finished().getBytes(StandardCharsets.UTF_8));
    }

    private void figures() {
        UpperBody upper = new UpperBody(body, outline);
        upper.front().forEach(line -> drawn(Ink.FAINT, FRONT, line, false));
        drawn(Ink.FAINT, FRONT, upper.headFront(), true);
        upper.side().forEach(line -> drawn(Ink.FAINT, SIDE, line, false));
        drawn(Ink.FAINT, SIDE, upper.headSide(), true);
        drawn(Ink.GRAIN, FRONT, outline.front(), false);
        if (!alike()) {
            drawn(Ink.FAINT, SIDE, outline.side(Side.RIGHT), false);
        }
        drawn(Ink.GRAIN, SIDE, outline.side(Side.LEFT), false);
        svg.line(Ink.FAINT, new Point(30, GROUND), new Point(WIDTH - 30, GROUND));
    }

    private void drawn(Ink ink, double middle, List<Point> line, boolean closed) {
        svg.line(ink, line.stream().map(p -> on(middle, p)).toList(), closed);
    }

    private boolean alike() {
        return body.legs().own(Side.LEFT).equals(body.legs().own(Side.RIGHT));
    }

    private static Point on(double middle, Point mm) {
        return new Point(middle + mm.x() * SCALE, GROUND + mm.y() * SCALE);
    }

    private void heights() {
        List<Label> labels = new ArrayList<>();
        for (Measure measure : HEIGHTS) {
            labels.add(new Label(body.mm(measure), words(measure)));
        }
        for (Label label : apart(labels)) {
            double at = GROUND + label.mm * SCALE;
            svg.text(new Writing(Ink.LABEL, new Point(56, label.y - 1), 0, LETTERS, Writing.Align.END, label.words));
            svg.line(Ink.FAINT, new Point(57, label.y), new Point(62, at), new Point(FRONT + 27, at));
        }
    }

    private void girths() {
        double crotch = body.mm(Measure.CROTCH_HEIGHT);
        double knee = body.mm(Measure.KNEE_HEIGHT);
        List<Label> labels = new ArrayList<>();
        labels.add(new Label(body.mm(Measure.WAIST_HEIGHT), words(Measure.WAIST_GIRTH)));
        labels.add(new Label(body.mm(Measure.HIP_HEIGHT), words(Measure.HIP_GIRTH)));
        labels.add(new Label(outline.thighHeight(), words(Measure.THIGH_GIRTH)));
        labels.add(new Label((crotch + knee) / 2, words(Measure.MID_THIGH_GIRTH)));
        labels.add(new Label(knee, words(Measure.KNEE_GIRTH)));
        labels.add(new Label(body.mm(Measure.CALF_HEIGHT), words(Measure.CALF_GIRTH)));
        labels.add(new Label(body.mm(Measure.ANKLE_HEIGHT), words(Measure.ANKLE_GIRTH)));
        for (Label label : apart(labels)) {
            double at = GROUND + label.mm * SCALE;
            svg.text(Writing.at(Ink.LABEL, FRONT + 34, label.y - 1, LETTERS, label.words));
            double from = FRONT + (outline.outerAt(Side.LEFT, label.mm) + 8) * SCALE;
            double inner = FRONT + (outline.innerAt(Side.LEFT, label.mm) - 8) * SCALE;
            svg.line(Ink.GRAIN, new Point(inner, at), new Point(from, at));
            if (label.mm < crotch && !body.legs().alike()) {
                svg.line(
                        Ink.GRAIN,
                        new Point(FRONT - (outline.innerAt(Side.RIGHT, label.mm) - 8) * SCALE, at),
                        new Point(FRONT - (outline.outerAt(Side.RIGHT, label.mm) + 8) * SCALE, at));
            }
            svg.line(Ink.FAINT, new Point(from, at), new Point(FRONT + 29, at), new Point(FRONT + 33, label.y));
        }
    }

    /** What runs along the body: through the crotch, round the heel, along the foot. */
    private void lengths() {
        svg.line(Ink.FOLD, outline.crotchLine().stream().map(p -> on(SIDE, p)).toList(), false);
        double right = SIDE + 30;
        Point back = on(SIDE, outline.crotchLine().get(outline.crotchLine().size() - 2));
        svg.text(Writing.at(Ink.LABEL, right, back.y() + 2, LETTERS, Phrases.of("body.crotch")));
        svg.text(Writing.at(Ink.LABEL, right, back.y() - 2, LETTERS, value(Measure.TOTAL_CROTCH_LENGTH)));
        svg.text(Writing.at(Ink.LABEL, right, back.y() - 7, LETTERS, Phrases.of("body.crotch-back")));
        svg.text(Writing.at(Ink.LABEL, right, back.y() - 11, LETTERS, value(Measure.BACK_CROTCH_LENGTH)));
        svg.line(Ink.FAINT, new Point(right - 1, back.y() + 1), back);
        List<Point> heel = outline.heelLine().stream().map(p -> on(SIDE, p)).toList();
        svg.line(Ink.FOLD, heel, false);
        Point heelEnd = heel.get(heel.size() - 1);
        svg.text(Writing.at(Ink.LABEL, right - 8, GROUND + 12, LETTERS, Phrases.of("body.heel")));
        svg.text(Writing.at(Ink.LABEL, right - 8, GROUND + 8, LETTERS, value(Measure.HEEL_GIRTH)));
        svg.line(Ink.FAINT, new Point(right - 9, GROUND + 10), heelEnd);
        double toe = SIDE + outline.toe() * SCALE;
        double end = SIDE + outline.heel() * SCALE;
        svg.line(Ink.GRAIN, new Point(toe, GROUND - 3), new Point(end, GROUND - 3));
        svg.line(Ink.GRAIN, new Point(toe, GROUND - 4), new Point(toe, GROUND - 2));
        svg.line(Ink.GRAIN, new Point(end, GROUND - 4), new Point(end, GROUND - 2));
        svg.text(Writing.middle(Ink.LABEL, (toe + end) / 2, GROUND - 7.5, LETTERS, words(Measure.FOOT_LENGTH)));
    }

    private void legend() {
        svg.text(Writing.at(Ink.LABEL, 6, 6, LETTERS, legendWords()));
    }

    private String legendWords() {
        String legend =
                alike() ? Phrases.of("body.legend-alike", unit.symbol()) : Phrases.of("body.legend", unit.symbol());
        return body.seated() ? legend + " " + Phrases.of("body.legend-seated") : legend;
    }

    private String words(Measure measure) {
        return measure.term() + " " + value(measure);
    }

    private String value(Measure measure) {
        Value left = body.legs().own(Side.LEFT).get(measure);
        Value right = body.legs().own(Side.RIGHT).get(measure);
        boolean hardLeft = body.legs().hard(Side.LEFT).contains(measure);
        boolean hardRight = body.legs().hard(Side.RIGHT).contains(measure);
        if (left != null && right != null) {
            return Phrases.of("body.two", hard(shown(left), hardLeft), hard(shown(right), hardRight));
        }
        String one = shown(body.value(measure));
        if (hardLeft && hardRight) {
            return Phrases.of("body.hard-both", one);
        }
        return hardLeft ? Phrases.of("body.hard-left", one) : hardRight ? Phrases.of("body.hard-right", one) : one;
    }

    private static String hard(String value, boolean hard) {
        return hard ? Phrases.of("body.hard", value) : value;
    }

    private String shown(Value value) {
        String number = Voice.of(unit).say(Part.bare(value.mm()));
        return value.origin() == Value.Origin.GIVEN ? number : "~" + number;
    }

    /** Words about a height; y is where they stand on the drawing. */
    private record Label(double mm, double y, String words) {
        Label(double mm, String words) {
            this(mm, GROUND + mm * SCALE, words);
        }
    }

    /** From the ground up, each at least a line above the one before. */
    private static List<Label> apart(List<Label> labels) {
        List<Label> sorted = labels.stream()
                .sorted(java.util.Comparator.comparingDouble(Label::mm))
                .toList();
        List<Label> apart = new ArrayList<>();
        double least = 0;
        for (Label label : sorted) {
            double y = Math.max(label.y, least);
            apart.add(new Label(label.mm, y, label.words));
            least = y + LETTERS * 1.3;
        }
        return apart;
    }
}
