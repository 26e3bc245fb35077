package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.Side;
import stretchwright.body.Stance;
import stretchwright.ground.Part;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.Said;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;
import stretchwright.pattern.WhichLeg;

/**
 * What must hold of every draft, asked at run time: outlines, seams that meet, the crotch seam's length, widths, corners,
 * smoothness, notches, the band. In: body, style, pattern. Out: what is broken, each with its number; empty where all
 * holds. The list is "What holds for every body" of docs/maths/draft.md; the tests ask the same again by other ways.
 */
public final class DraftCheck {
    /** Lengths that must agree may differ by this, mm. */
    static final double CLOSE = 0.5;

    /** A turn read over chords is off by this share at the most. */
    private static final double READ = 0.05;

    /** Changes of bend of an inseam that follows the thigh: hollow, full, hollow at the knee, full at the calf. */
    private static final int BELLIED = 3;

    private static final double FLAT = 2;
    private static final double SQUARE = 3;

    private final Body body;
    private final Style style;
    private final Pattern pattern;
    private final List<Broken> broken = new ArrayList<>();

    /**
     * Something that does not hold.
     *
     * @param about where
     * @param said what, with its numbers
     */
    public record Broken(Said about, Said said) {}

    private DraftCheck(Body body, Style style, Pattern pattern) {
        this.body = Padded.of(body, style.parts());
        this.style = style;
        this.pattern = pattern;
    }

    public static List<Broken> broken(Body body, Style style, Pattern pattern) {
        DraftCheck check = new DraftCheck(body, style, pattern);
        for (Piece piece : pattern.pieces()) {
            check.outline(Tell.said("about.sew-line", piece.name().said()), piece.sewLine());
            check.outline(Tell.said("about.cut-line", piece.name().said()), piece.cutLine());
        }
        check.seams();
        check.band();
        check.levels();
        pattern.legs().stream().filter(DraftCheck::isWhole).forEach(check::leg);
        check.broken.addAll(NotchGaps.broken(pattern));
        return List.copyOf(check.broken);
    }

    /** A leg in one piece: one that is cut into parts is checked by its outlines and seams. */
    private static boolean isWhole(Piece piece) {
        return List.of(
                        EdgeName.HEM,
                        EdgeName.BACK_INSEAM,
                        EdgeName.BACK_CROTCH,
                        EdgeName.WAIST_EDGE,
                        EdgeName.FRONT_CROTCH,
                        EdgeName.FRONT_INSEAM)
                .equals(piece.edges().stream().map(Edge::name).toList());
    }

    private void say(boolean holds, Said about, Said said) {
        if (!holds) {
            broken.add(new Broken(about, said));
        }
    }

    private static Part mm(double mm) {
        return Part.millimetres(mm, 2);
    }

    static boolean crosses(Polygon polygon) {
        List<Point> points = polygon.points();
        Coordinate[] ring = new Coordinate[points.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Point p = points.get(i % points.size());
            ring[i] = new Coordinate(p.x(), p.y());
        }
        return !new GeometryFactory().createPolygon(ring).isValid();
    }

    private void outline(Said what, Polygon polygon) {
        say(!crosses(polygon), what, Tell.said("check.crosses", what));
        say(Polygon.signedArea(polygon.points()) > 0, what, Tell.said("check.clockwise", what));
    }

    private void seams() {
        for (Seam seam : pattern.seams()) {
            if (seam.sides().size() == 2) {
                double ease = seam.sides().get(1).length() - seam.sides().get(0).length();
                Said name = Tell.said("about.seam", seam.name().said());
                say(Math.abs(ease - seam.ease()) <= CLOSE, name, Tell.said("check.sides", name, mm(ease)));
                boolean eased =
                        seam.role() == Seam.Role.WAISTBAND_JOIN || style.parts().kneeShaping();
                say(eased || Math.abs(seam.ease()) <= CLOSE, name, Tell.said("check.ease", name, mm(seam.ease())));
            }
        }
    }

    /** A band never longer than what it is joined to, and shorter than the body: then it holds. */
    private void band() {
        pattern.seam(Seam.Role.WAISTBAND_JOIN)
                .filter(s -> s.sides().size() == 2)
                .ifPresent(join -> {
                    double band = join.sides().get(1).length();
                    say(
                            band <= join.sides().get(0).length() + CLOSE,
                            Tell.said("about.band"),
                            Tell.said("check.band-long", Part.millimetres(band, 1)));
                    double girth = Frame.topGirth(body, style);
                    say(
                            band < girth,
                            Tell.said("about.band"),
                            Tell.said("check.band-loose", Part.millimetres(band, 1), Part.millimetres(girth, 1)));
                });
    }

    private void levels() {
        for (Piece leg : pattern.legs()) {
            if (!isWhole(leg)) {
                continue;
            }
            double above = Double.POSITIVE_INFINITY;
            for (Level level : pattern.onlyLeg(leg.name().leg()).levels()) {
                say(
                        level.height() < above,
                        level.name().said(),
                        Tell.said("check.level-order", level.name().said()));
                above = level.height();
                boolean drawn = level.name() != Level.Name.WAIST;
                if (drawn && level.name() != Level.Name.HEM && pattern.legs().size() == 1) {
                    double width = width(leg, level.height()) * (level.name().wholeBody() ? 2 : 1);
                    say(
                            Math.abs(width - level.width()) <= CLOSE,
                            level.name().said(),
                            Tell.said("check.width", level.name().said(), mm(width), mm(level.width())));
                }
            }
        }
    }

    /** From side to side along a horizontal. */
    static double width(Piece leg, double height) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (EdgeName name :
                List.of(EdgeName.BACK_INSEAM, EdgeName.BACK_CROTCH, EdgeName.FRONT_CROTCH, EdgeName.FRONT_INSEAM)) {
            Path line = leg.edge(name).line();
            double along = line.alongAtHeight(height);
            if (along >= 0) {
                least = Math.min(least, line.at(along).x());
                most = Math.max(most, line.at(along).x());
            }
        }
        return most - least;
    }

    private void leg(Piece leg) {
        double front = leg.edge(EdgeName.FRONT_CROTCH).length();
        double back = leg.edge(EdgeName.BACK_CROTCH).length();
        double target = Top.crotchTarget(body, style, pattern);
        Said seam = Tell.said("about.crotch-seam");
        say(
                Math.abs(front + back - target) <= CLOSE + estimate() * target,
                seam,
                Tell.said("check.crotch-seam", mm(front + back), mm(target)));
        boolean asked = style.top().frontRaise() != 0
                || style.top().backRaise() != 0
                || !style.shifts().isEmpty()
                || !body.stance().equals(Stance.STANDING);
        if (!asked) {
            double turn = Truth.turn(leg);
            double most = Math.toDegrees(Truth.STEP / Rise.radius(body)) * (1 + READ);
            say(turn <= most, seam, Tell.said("check.crotch-turns", Part.number(turn, 1), Part.number(most, 1)));
            double higher = leg.edge(EdgeName.BACK_CROTCH).line().end().y()
                    - leg.edge(EdgeName.FRONT_CROTCH).line().start().y();
            say(back > front, seam, Tell.said("check.front-longer", mm(front - back)));
            say(higher > 0, Tell.said("about.waist"), Tell.said("check.back-lower", mm(-higher)));
        }
        corner(
                leg,
                180,
                FLAT,
                EdgeName.FRONT_CROTCH,
                EdgeName.FRONT_INSEAM,
                EdgeName.BACK_INSEAM,
                EdgeName.BACK_CROTCH);
        corner(leg, 180, FLAT, EdgeName.FRONT_INSEAM, EdgeName.HEM, EdgeName.HEM, EdgeName.BACK_INSEAM);
        corner(leg, 90, SQUARE, EdgeName.BACK_CROTCH, EdgeName.WAIST_EDGE);
        corner(leg, 90, SQUARE, EdgeName.WAIST_EDGE, EdgeName.FRONT_CROTCH);
        for (EdgeName name : List.of(EdgeName.FRONT_CROTCH, EdgeName.BACK_CROTCH)) {
            int turns = Smoothness.changes(leg.edge(name).line(), Double.NEGATIVE_INFINITY);
            Said curve = Tell.said("about.curve", name.said());
            say(turns == 0, curve, Tell.said("check.bends", curve, Part.count(turns)));
        }
        for (EdgeName name : List.of(EdgeName.FRONT_INSEAM, EdgeName.BACK_INSEAM)) {
            int turns = Smoothness.changes(leg.edge(name).line(), straightBelow(leg));
            Said edge = Tell.said("about.edge", name.said());
            say(
                    turns <= (bellied(leg) ? BELLIED : 1) + eased(),
                    edge,
                    Tell.said("check.bends", edge, Part.count(turns)));
        }
        marks(leg);
    }

    /** Where a maker asks for another hem, the leg runs from the calf to it: it may bend once more. */
    private int eased() {
        return style.ease().getOrDefault(Level.Name.HEM, 0.0) == 0 ? 0 : 1;
    }

    /** Where a pressure is planned the leg follows the thigh, which is fullest in its middle. */
    private boolean bellied(Piece leg) {
        return pattern.holds().stream()
                .anyMatch(h -> h.level() == Level.Name.MID_THIGH
                        && h.wanted().isPresent()
                        && (h.leg() == leg.name().leg() || h.leg() == WhichLeg.BOTH));
    }

    /** A level line lies at its level and is as long as the width told there. */
    private void marks(Piece leg) {
        Pattern own = pattern.onlyLeg(leg.name().leg());
        for (Mark mark : leg.marks()) {
            mark.name().level().flatMap(own::level).ifPresent(level -> {
                double width = mark.line().length() * (level.name().wholeBody() ? 2 : 1);
                boolean same =
                        leg.name().leg() == WhichLeg.RIGHT && level.name().wholeBody();
                say(
                        same
                                || Math.abs(width - level.width()) <= CLOSE
                                        && Math.abs(mark.line().start().y() - level.height()) <= CLOSE,
                        mark.name().said(),
                        Tell.said("check.width", mark.name().said(), mm(width), mm(level.width())));
            });
        }
    }

    /** By what share an estimated crotch length may have given way. */
    private double estimate() {
        return body.isGiven(Measure.TOTAL_CROTCH_LENGTH) ? 0 : Rise.ESTIMATE_GIVES;
    }

    /** Interior angles at one or two corners, each named by the edge before and after. */
    private void corner(Piece leg, double wanted, double within, EdgeName... edges) {
        double sum = 0;
        for (int i = 0; i < edges.length; i += 2) {
            Path in = leg.edge(edges[i]).line();
            Path out = leg.edge(edges[i + 1]).line();
            Point a = in.directionAt(in.length());
            Point b = out.directionAt(0);
            sum += 180 - Math.toDegrees(StrictMath.atan2(a.cross(b), a.dot(b)));
        }
        Said where = Tell.said("about.corner", edges[0].said(), edges[1].said());
        say(
                Math.abs(sum - wanted) <= within,
                where,
                Tell.said("check.corner", where, Part.number(sum, 2), Part.number(wanted, 0)));
    }

    /** Above the boot's tongue, or above the straight run over a hem. */
    private double straightBelow(Piece leg) {
        double hem = leg.edge(EdgeName.HEM).line().start().y();
        double turned = pattern.level(Level.Name.ANKLE).map(Level::height).orElse(hem) + LegLine.ANKLE_TURN;
        double tongue = pattern.level(Level.Name.BOOT_TOP).map(Level::height).orElse(hem) + LegLine.ANKLE_TURN;
        return Math.max(turned, tongue) + 1;
    }

    /** What the waist edge at the side lies above its measured place, mm: what heights and crotch length disagree by. */
    public static double correction(Body body, Style style, Pattern pattern) {
        Piece leg = pattern.legs().get(0);
        Body own = pattern.legs().size() == 1 ? body : body.leg(Side.LEFT);
        double crotch = own.mm(Measure.CROTCH_HEIGHT);
        double wanted = crotch * (1 - pattern.reductions().along())
                + (own.mm(Measure.WAIST_HEIGHT) - style.dropBelowWaist() - crotch)
                        * (1 - pattern.reductions().rise());
        List<Point> edge = leg.edge(EdgeName.WAIST_EDGE).line().points();
        for (int i = 1; i < edge.size(); i++) {
            Point a = edge.get(i - 1);
            Point b = edge.get(i);
            if (a.x() >= 0 && b.x() <= 0 && a.x() > b.x()) {
                return a.towards(b, a.x() / (a.x() - b.x())).y() - wanted - pattern.above();
            }
        }
        return 0;
    }

    /** The tightest bend of the leg's curves, as a radius in mm, and where it is. */
    public static Smoothness.Tightest tightest(Pattern pattern) {
        return Smoothness.tightest(pattern.legs().get(0));
    }
}
