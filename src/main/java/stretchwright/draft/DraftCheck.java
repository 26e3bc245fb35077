package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.Side;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Level;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;

/**
 * What must hold of every draft, asked at run time: outlines, seams that meet, the crotch seam's length, widths, corners,
 * smoothness, notches, the band. In: body, style, pattern. Out: what is broken, each with its number; empty where all
 * holds. The list is "What holds for every body" of docs/maths/draft.md; the tests ask the same again by other ways.
 */
public final class DraftCheck {
    /** Lengths that must agree may differ by this, mm. */
    static final double CLOSE = 0.5;

    private static final double FLAT = 2;
    private static final double SQUARE = 3;

    private final Body body;
    private final Style style;
    private final Pattern pattern;
    private final List<String> broken = new ArrayList<>();

    private DraftCheck(Body body, Style style, Pattern pattern) {
        this.body = Padded.of(body, style.parts());
        this.style = style;
        this.pattern = pattern;
    }

    public static List<String> broken(Body body, Style style, Pattern pattern) {
        DraftCheck check = new DraftCheck(body, style, pattern);
        for (Piece piece : pattern.pieces()) {
            check.outline(piece.name() + " sew line", piece.sewLine());
            check.outline(piece.name() + " cut line", piece.cutLine());
        }
        check.seams();
        check.band();
        check.levels();
        pattern.legs().stream().filter(DraftCheck::isWhole).forEach(check::leg);
        return List.copyOf(check.broken);
    }

    /** A leg in one piece: one that is cut into parts is checked by its outlines and seams. */
    private static boolean isWhole(Piece piece) {
        return List.of("hem", "back inseam", "back crotch", "waist edge", "front crotch", "front inseam")
                .equals(piece.edges().stream().map(Edge::name).toList());
    }

    private void say(boolean holds, String format, Object... values) {
        if (!holds) {
            broken.add(String.format(Locale.ROOT, format, values));
        }
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

    private void outline(String what, Polygon polygon) {
        say(!crosses(polygon), "the %s crosses itself", what);
        say(Polygon.signedArea(polygon.points()) > 0, "the %s runs clockwise", what);
    }

    private void seams() {
        for (Seam seam : pattern.seams()) {
            if (seam.sides().size() == 2) {
                double ease = seam.sides().get(1).length() - seam.sides().get(0).length();
                say(Math.abs(ease - seam.ease()) <= CLOSE, "%s: sides differ by %.2f mm", seam.name(), ease);
                boolean eased =
                        seam.role() == Seam.Role.WAISTBAND_JOIN || style.parts().kneeShaping();
                say(eased || Math.abs(seam.ease()) <= CLOSE, "%s: ease %.2f mm", seam.name(), seam.ease());
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
                            "the band of %.1f mm is longer than the leg tops",
                            band);
                    double girth = Frame.topGirth(body, style);
                    say(band < girth, "the band of %.1f mm does not hold on %.1f mm", band, girth);
                });
    }

    private void levels() {
        for (Piece leg : pattern.legs()) {
            if (!isWhole(leg)) {
                continue;
            }
            String side = leg.name().replaceFirst(" ?leg$", "");
            double above = Double.POSITIVE_INFINITY;
            for (Level level : pattern.onlyLeg(side).levels()) {
                say(
                        level.height() < above,
                        "%s lies above the level before it",
                        level.name().word());
                above = level.height();
                boolean drawn = level.name() != Level.Name.WAIST && level.name() != Level.Name.CROTCH;
                if (drawn && level.name() != Level.Name.HEM && pattern.legs().size() == 1) {
                    double width = width(leg, level.height()) * (level.name().wholeBody() ? 2 : 1);
                    say(
                            Math.abs(width - level.width()) <= CLOSE,
                            "width at the %s is %.2f and not %.2f mm",
                            level.name().word(),
                            width,
                            level.width());
                }
            }
        }
    }

    /** From side to side along a horizontal. */
    private static double width(Piece leg, double height) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (String name : List.of("back inseam", "back crotch", "front crotch", "front inseam")) {
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
        double front = leg.edge("front crotch").length();
        double back = leg.edge("back crotch").length();
        if (style.top().frontRaise() == 0 && style.top().backRaise() == 0) {
            double target = Top.crotchTarget(body, style, pattern.reductions());
            say(Math.abs(front + back - target) <= CLOSE, "crotch seam %.2f and not %.2f mm", front + back, target);
            double higher = leg.edge("back crotch").line().end().y()
                    - leg.edge("front crotch").line().start().y();
            say(back > front, "the front crotch curve is %.2f mm longer", front - back);
            say(higher > 0, "the back waist is %.2f mm lower", -higher);
        }
        corner(leg, 180, FLAT, "front crotch", "front inseam", "back inseam", "back crotch");
        corner(leg, 180, FLAT, "front inseam", "hem", "hem", "back inseam");
        corner(leg, 90, SQUARE, "back crotch", "waist edge");
        corner(leg, 90, SQUARE, "waist edge", "front crotch");
        for (String name : List.of("front crotch", "back crotch")) {
            int turns = Smoothness.changes(leg.edge(name).line(), Double.NEGATIVE_INFINITY);
            say(turns == 0, "the %s curve changes its bend %d times", name, turns);
        }
        for (String name : List.of("front inseam", "back inseam")) {
            int turns = Smoothness.changes(leg.edge(name).line(), straightBelow(leg));
            say(turns <= 1, "the %s changes its bend %d times", name, turns);
        }
        notches(leg);
    }

    /** Interior angles at one or two corners, each named by the edge before and after. */
    private void corner(Piece leg, double wanted, double within, String... edges) {
        double sum = 0;
        for (int i = 0; i < edges.length; i += 2) {
            Path in = leg.edge(edges[i]).line();
            Path out = leg.edge(edges[i + 1]).line();
            Point a = in.directionAt(in.length());
            Point b = out.directionAt(0);
            sum += 180 - Math.toDegrees(StrictMath.atan2(a.cross(b), a.dot(b)));
        }
        String where = edges[0] + " to " + edges[1];
        say(Math.abs(sum - wanted) <= within, "corner %s: %.2f and not %.0f degrees", where, sum, wanted);
    }

    /** Above the boot's tongue, or above the straight run over a hem. */
    private double straightBelow(Piece leg) {
        double hem = leg.edge("hem").line().start().y();
        double turned = pattern.level(Level.Name.ANKLE).map(Level::height).orElse(hem) + LegLine.ANKLE_TURN;
        double tongue = pattern.level(Level.Name.BOOT_TOP).map(Level::height).orElse(hem) + LegLine.TONGUE;
        return Math.max(turned, tongue) + 1;
    }

    /** Notches of one name on both inseams are sewn together: as far from the hem. */
    private void notches(Piece leg) {
        for (Notch front : leg.notches()) {
            if (!front.edge().equals("front inseam")) {
                continue;
            }
            double fromHem = leg.edge("front inseam").length() - front.along();
            leg.notches().stream()
                    .filter(n -> n.edge().equals("back inseam") && n.name().equals(front.name()))
                    .forEach(back -> say(
                            Math.abs(back.along() - fromHem) <= CLOSE,
                            "the %s notches are %.2f mm apart",
                            front.name(),
                            back.along() - fromHem));
        }
    }

    /** What the waist edge at the side lies above its measured place, mm: what heights and crotch length disagree by. */
    public static double correction(Body body, Style style, Pattern pattern) {
        Piece leg = pattern.legs().get(0);
        Body own = pattern.legs().size() == 1 ? body : body.leg(Side.LEFT);
        double wanted = (own.mm(Measure.WAIST_HEIGHT) - style.dropBelowWaist())
                * (1 - pattern.reductions().along());
        List<Point> edge = leg.edge("waist edge").line().points();
        for (int i = 1; i < edge.size(); i++) {
            Point a = edge.get(i - 1);
            Point b = edge.get(i);
            if (a.x() >= 0 && b.x() <= 0 && a.x() > b.x()) {
                return a.towards(b, a.x() / (a.x() - b.x())).y() - wanted;
            }
        }
        return 0;
    }

    /** The tightest bend of the leg's curves, as a radius in mm, and where it is. */
    public static Smoothness.Tightest tightest(Pattern pattern) {
        return Smoothness.tightest(pattern.legs().get(0));
    }
}
