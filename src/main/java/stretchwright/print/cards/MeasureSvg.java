package stretchwright.print.cards;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.MeasureGuide;
import stretchwright.body.Side;
import stretchwright.ground.Document;
import stretchwright.ground.Point;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.SvgCanvas;

/**
 * How one measure lies on the body: the figure thin, the tape thick, dashed where it runs behind. In: a body to draw,
 * the measure. Out: one small SVG drawing, 1 : 16. For the guide to measuring; of the wearer's own body see
 * {@link BodySvg}.
 */
public final class MeasureSvg {
    private static final double SCALE = 1.0 / 16;
    private static final double WIDTH = 64;
    private static final double MIDDLE = 34;
    private static final double GROUND = 8;
    private static final double TOP = 6;

    /** Half length of the mark at either end of a length, drawn mm. */
    private static final double END = 1.5;

    /** A tape seen from the front is drawn as an ellipse this much as deep as wide. */
    private static final double ELLIPSE = 0.16;

    private static final int CHORDS = 24;

    private final Body body;
    private final BodyOutline outline;
    private final SvgCanvas svg;

    private MeasureSvg(Body body, Measure measure) {
        this.body = body;
        this.outline = new BodyOutline(body);
        this.svg = new SvgCanvas(WIDTH, GROUND + body.mm(Measure.STATURE) * SCALE + TOP, measure.term());
    }

    public static Document of(Body body, Measure measure) {
        MeasureSvg drawing = new MeasureSvg(body, measure);
        drawing.draw(measure);
        String name = MeasureGuide.of(measure).picture();
        return new Document(name, "how to measure", 1, drawing.svg.finished().getBytes(StandardCharsets.UTF_8));
    }

    private void draw(Measure measure) {
        switch (measure) {
            case STATURE,
                    WAIST_HEIGHT,
                    HIP_HEIGHT,
                    CROTCH_HEIGHT,
                    KNEE_HEIGHT,
                    CALF_HEIGHT,
                    ANKLE_HEIGHT,
                    ANKLE_BONE_HEIGHT -> {
                front();
                height(body.mm(measure));
            }
            case WAIST_GIRTH -> trunk(body.mm(Measure.WAIST_HEIGHT));
            case HIP_GIRTH -> trunk(body.mm(Measure.HIP_HEIGHT));
            case THIGH_GIRTH -> leg(outline.thighHeight());
            case MID_THIGH_GIRTH -> leg((body.mm(Measure.CROTCH_HEIGHT) + body.mm(Measure.KNEE_HEIGHT)) / 2);
            case KNEE_GIRTH -> leg(body.mm(Measure.KNEE_HEIGHT));
            case CALF_GIRTH -> leg(body.mm(Measure.CALF_HEIGHT));
            case ANKLE_GIRTH -> leg(body.mm(Measure.ANKLE_HEIGHT));
            case TOTAL_CROTCH_LENGTH -> alongTheSide(outline.crotchLine());
            case BACK_CROTCH_LENGTH -> alongTheSide(behind(outline.crotchLine()));
            case HEEL_GIRTH -> alongTheSide(outline.heelLine());
            case FOOT_LENGTH -> {
                side();
                length(on(new Point(outline.toe(), 0)), on(new Point(outline.heel(), 0)), -3);
            }
        }
    }

    private void front() {
        UpperBody upper = new UpperBody(body, outline);
        upper.front().forEach(line -> thin(line, false));
        thin(upper.headFront(), true);
        thin(outline.front(), false);
        ground();
    }

    private void side() {
        UpperBody upper = new UpperBody(body, outline);
        upper.side().forEach(line -> thin(line, false));
        thin(upper.headSide(), true);
        thin(outline.side(Side.LEFT), false);
        ground();
    }

    private void ground() {
        svg.line(Ink.FAINT, new Point(4, GROUND), new Point(WIDTH - 4, GROUND));
    }

    private void thin(List<Point> line, boolean closed) {
        svg.line(Ink.FAINT, line.stream().map(MeasureSvg::on).toList(), closed);
    }

    private static Point on(Point mm) {
        return new Point(MIDDLE + mm.x() * SCALE, GROUND + mm.y() * SCALE);
    }

    /** From the floor to the level, beside the figure. */
    private void height(double mm) {
        double x = 8;
        double y = GROUND + mm * SCALE;
        svg.line(Ink.CUT, new Point(x, GROUND), new Point(x, y));
        for (double end : new double[] {GROUND, y}) {
            svg.line(Ink.CUT, new Point(x - END, end), new Point(x + END, end));
        }
        svg.line(Ink.MARK, new Point(x, y), new Point(MIDDLE + 12, y));
    }

    private void trunk(double height) {
        front();
        double outer = outline.outerAt(Side.LEFT, height);
        ring(-outer, outer, height);
    }

    private void leg(double height) {
        front();
        ring(outline.innerAt(Side.LEFT, height), outline.outerAt(Side.LEFT, height), height);
    }

    /** The tape round the body: in front solid, behind dashed. */
    private void ring(double left, double right, double height) {
        svg.line(Ink.CUT, arc(left, right, height, -1), false);
        svg.line(Ink.SEW, arc(left, right, height, 1), false);
    }

    private static List<Point> arc(double left, double right, double height, int way) {
        List<Point> points = new ArrayList<>();
        double half = (right - left) / 2;
        for (int i = 0; i <= CHORDS; i++) {
            double angle = Math.PI * i / CHORDS;
            points.add(on(new Point(
                    (left + right) / 2 - half * Math.cos(angle), height + way * half * ELLIPSE * Math.sin(angle))));
        }
        return points;
    }

    private void alongTheSide(List<Point> tape) {
        side();
        svg.line(Ink.CUT, tape.stream().map(MeasureSvg::on).toList(), false);
    }

    /** From the lowest point, between the legs, up the back; the figure looks to the left. */
    private static List<Point> behind(List<Point> crotch) {
        int lowest = 0;
        for (int i = 1; i < crotch.size(); i++) {
            if (crotch.get(i).y() < crotch.get(lowest).y()) {
                lowest = i;
            }
        }
        boolean backLast = crotch.get(crotch.size() - 1).x() > crotch.get(0).x();
        return backLast ? crotch.subList(lowest, crotch.size()) : crotch.subList(0, lowest + 1);
    }

    private void length(Point from, Point to, double below) {
        Point a = new Point(from.x(), from.y() + below);
        Point b = new Point(to.x(), to.y() + below);
        svg.line(Ink.CUT, a, b);
        for (Point end : List.of(a, b)) {
            svg.line(Ink.CUT, new Point(end.x(), end.y() - END), new Point(end.x(), end.y() + END));
        }
    }
}
