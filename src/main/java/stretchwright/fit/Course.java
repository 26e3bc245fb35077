package stretchwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.GirthProfile;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Laplace;
import stretchwright.fabric.Strain;
import stretchwright.ground.Point;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.Style;
import stretchwright.pattern.WhichLeg;

/**
 * Strain and pressure along the leg between the levels, for the plots.
 *
 * <p>The hip and the crotch, then every 10 mm from there down to the hem; between hip and crotch the cloth runs through between the
 * legs and there is no ring to compare. Width: the sew line's extent across, summed over the parts of the leg. Girth: the
 * leg's profile, near the crotch no more than the thigh girth, as at the level; over a boot the boot's.
 */
final class Course {
    /** Between two heights, mm on the flat piece. */
    static final double STEP = 10;

    /** The ends of the leg's sides may lie a hair off the level. */
    private static final double HAIR = 0.02;

    /** The first ring below the tips of the inseams, mm. */
    private static final double CLEAR = 1;

    private final List<FitReport.LevelFit> fits;
    private final List<Level> levels;
    private final Pattern pattern;
    private final Body body;
    private final Fabric fabric;
    private final Optional<Boot> boot;
    private final Style style;
    private final GirthProfile profile;
    private final List<List<Point>> outlines;

    private Course(
            List<FitReport.LevelFit> fits,
            Pattern pattern,
            Body body,
            Fabric fabric,
            Optional<Boot> boot,
            Style style) {
        this.fits = fits;
        this.levels = pattern.levels();
        this.pattern = pattern;
        this.body = body;
        this.fabric = fabric;
        this.boot = boot.filter(b -> Levels.hemOver(b, style.lower().hem()).isPresent());
        this.style = style;
        profile = GirthProfile.of(body);
        outlines = pattern.pieces().stream()
                .filter(p -> p.name().kind().isOfLeg())
                .filter(p -> leg() == WhichLeg.BOTH || p.name().leg() == leg())
                .map(Piece::sewLine)
                .map(line -> line.points())
                .toList();
    }

    /** Of one leg: the levels are those of the pattern, in its order. */
    static Course on(
            List<FitReport.LevelFit> fits,
            Pattern pattern,
            Body body,
            Fabric fabric,
            Optional<Boot> boot,
            Style style) {
        return new Course(fits, pattern, body, fabric, boot, style);
    }

    static List<FitReport.CoursePoint> of(
            List<FitReport.LevelFit> fits,
            Pattern pattern,
            Body body,
            Fabric fabric,
            Optional<Boot> boot,
            Style style) {
        return on(fits, pattern, body, fabric, boot, style).points(STEP);
    }

    /** @param apart at most so far between two heights, mm on the flat piece */
    List<FitReport.CoursePoint> points(double apart) {
        List<FitReport.CoursePoint> out = new ArrayList<>();
        double foot = Double.MAX_VALUE;
        for (int i = 0; i < levels.size(); i++) {
            Level.Name name = levels.get(i).name();
            if (name == Level.Name.HIP || name == Level.Name.CROTCH) {
                out.add(point(fits.get(i), levels.get(i).height()));
            }
        }
        double top = Math.min(
                tip(), pattern.level(Level.Name.CROTCH).map(Level::height).orElse(Double.MAX_VALUE));
        for (List<Point> outline : outlines) {
            foot = Math.min(foot, outline.stream().mapToDouble(Point::y).min().orElse(foot));
        }
        int steps = (int) Math.max(1, Math.ceil((top - foot) / apart));
        for (int i = 0; i < steps; i++) {
            // the lower edge may be curved: the last ring is the hem's own
            double y = top - CLEAR - i * (top - foot) / steps;
            if (width(y) > 0) {
                out.add(at(y));
            }
        }
        FitReport.LevelFit last = fits.get(fits.size() - 1);
        if (last.level() == Level.Name.HEM && !hangsOnLeg()) {
            out.add(point(last, foot));
        }
        return out;
    }

    /** The lower of the inseams' upper ends: the back's lies below the front's, and above it no level line goes round. */
    private double tip() {
        return pattern.pieces().stream()
                .flatMap(p -> p.edges().stream())
                .filter(e -> e.name() == EdgeName.FRONT_INSEAM || e.name() == EdgeName.BACK_INSEAM)
                .mapToDouble(e -> Math.max(e.line().start().y(), e.line().end().y()))
                .min()
                .orElse(0);
    }

    /** A cover hangs below the leg's own lower edge. */
    private boolean hangsOnLeg() {
        return pattern.pieces().stream().anyMatch(p -> p.name().is(PieceKind.BOOT_COVER));
    }

    private FitReport.CoursePoint point(FitReport.LevelFit l, double y) {
        return new FitReport.CoursePoint(leg(), bodyHeight(y), l.girth(), l.width(), l.across(), l.pressure());
    }

    /** At a height of the flat leg, between crotch and hem. */
    FitReport.CoursePoint at(double y) {
        double height = bodyHeight(y);
        double girth = girth(height) + between(y, true);
        double width = width(y);
        double across = Strain.of(width, girth);
        double tension = fabric.test().loadAcross().tension(across) / (1 + between(y, false));
        return new FitReport.CoursePoint(leg(), height, girth, width, across, Laplace.kilopascals(tension, girth));
    }

    private WhichLeg leg() {
        return fits.stream()
                .map(FitReport.LevelFit::leg)
                .filter(l -> l != WhichLeg.BOTH)
                .findFirst()
                .orElse(WhichLeg.BOTH);
    }

    private double bodyHeight(double y) {
        return pattern.onBody(y);
    }

    private double girth(double height) {
        double bootTop = boot.map(b -> bodyHeight(
                        pattern.level(Level.Name.BOOT_TOP).map(Level::height).orElse(0.0)))
                .orElse(-1.0);
        if (height <= bootTop + HAIR) {
            return boot.orElseThrow().girthBelowTop(bootTop - height);
        }
        boolean thigh = height > (body.mm(Measure.CROTCH_HEIGHT) + body.mm(Measure.KNEE_HEIGHT)) / 2;
        return thigh
                ? Math.min(
                        profile.girthAt(height),
                        Math.max(body.mm(Measure.THIGH_GIRTH), body.mm(Measure.MID_THIGH_GIRTH)))
                : profile.girthAt(height);
    }

    /** What pads add to the girth, or the strain along, in proportion between the leg's levels. */
    private double between(double y, boolean bulge) {
        double value = 0;
        double aboveAt = Double.NaN;
        for (int i = 0; i < levels.size(); i++) {
            Level level = levels.get(i);
            boolean cuff = level.name() == Level.Name.HEM && style.cuffHeight().isPresent();
            if (level.name().wholeBody() || cuff) {
                continue;
            }
            double here =
                    bulge ? style.parts().bulge(level.name()) : fits.get(i).along();
            if (Double.isNaN(aboveAt) || y >= aboveAt) {
                value = here;
                aboveAt = level.height();
            } else if (y >= level.height()) {
                double share = (aboveAt - y) / Math.max(HAIR, aboveAt - level.height());
                return value + share * (here - value);
            } else {
                value = here;
                aboveAt = level.height();
            }
        }
        return value;
    }

    /** Of the flat leg at a height: from its first to its last crossing with the sew line, over all parts. */
    private double width(double y) {
        double sum = 0;
        for (List<Point> line : outlines) {
            double low = Double.MAX_VALUE;
            double high = -Double.MAX_VALUE;
            Point a = line.get(line.size() - 1);
            for (Point b : line) {
                if ((a.y() > y) != (b.y() > y)) {
                    double x = a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
                    low = Math.min(low, x);
                    high = Math.max(high, x);
                }
                a = b;
            }
            sum += Math.max(0, high - low);
        }
        return sum;
    }
}
