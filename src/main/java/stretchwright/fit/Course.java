package stretchwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.boot.Boot;
import stretchwright.fabric.AsWorn;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Laplace;
import stretchwright.fabric.Strain;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;
import stretchwright.settle.LegShape;

/**
 * Strain and pressure along the leg between the levels, for the plots.
 *
 * <p>The hip and the crotch, then every 10 mm from there down to the hem; between hip and crotch the cloth runs through between the
 * legs and there is no ring to compare. Widths and girths: {@link LegShape}.
 */
final class Course {
    /** Between two heights, mm on the flat piece. */
    static final double STEP = 10;

    private final List<FitReport.LevelFit> fits;
    private final Pattern pattern;
    private final Fabric fabric;
    private final LegShape shape;

    /**
     * Of one leg.
     *
     * @param fits the levels of the pattern, in its order
     * @param shape of that leg
     */
    Course(List<FitReport.LevelFit> fits, Pattern pattern, Fabric fabric, LegShape shape) {
        this.fits = fits;
        this.pattern = pattern;
        this.fabric = fabric;
        this.shape = shape;
    }

    static List<FitReport.CoursePoint> of(
            List<FitReport.LevelFit> fits,
            Pattern pattern,
            Body body,
            Fabric fabric,
            Optional<Boot> boot,
            Style style) {
        return new Course(fits, pattern, fabric, new LegShape(pattern, body, boot, style)).points(STEP);
    }

    /** @param apart at most so far between two heights, mm on the flat piece */
    List<FitReport.CoursePoint> points(double apart) {
        List<FitReport.CoursePoint> out = new ArrayList<>();
        for (int i = 0; i < fits.size(); i++) {
            Level level = pattern.levels().get(i);
            if (level.name() == Level.Name.HIP || level.name() == Level.Name.CROTCH) {
                FitReport.LevelFit l = fits.get(i);
                out.add(new FitReport.CoursePoint(
                        shape.leg(), shape.onBody(level.height()), l.girth(), l.width(), l.across(), l.pressure()));
            }
        }
        shape.places(apart).forEach(p -> out.add(point(p)));
        return out;
    }

    /** At a height of the flat leg, between crotch and hem. */
    FitReport.CoursePoint at(double y) {
        return point(shape.at(y));
    }

    private FitReport.CoursePoint point(LegShape.Place p) {
        double across = Strain.of(p.width(), p.girth());
        double tension = p.layers() * AsWorn.of(fabric, p.along()).tension(across) / (1 + p.along());
        return new FitReport.CoursePoint(
                shape.leg(), p.height(), p.girth(), p.width(), across, Laplace.kilopascals(tension, p.girth()));
    }
}
