package stretchwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.fabric.ClothShape;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;

/** The cloth as it is: a remnant's outline under "on hand", and flaws; x from the left edge, y from the cut end. */
public final class ClothShapeReader {
    private static final String ON_HAND = "on hand";
    private static final String OUTLINE = "outline";
    private static final String FLAWS = "flaws";
    public static final String SELVAGE = "selvage";
    private static final String FROM =
            "Measure from the left edge of the usable width and the near cut end, the cloth's outside up.";
    private static final List<String> FLAW = List.of("from left", "from end", "wide", "long");
    private static final String OUTLINE_EXAMPLE = "[[0, 0], [140, 0], [140, 95], [60, 120], [0, 120]]";
    private static final String FLAW_EXAMPLE = "[{from left: 30, from end: 52, wide: 1, long: 2}]";
    private static final int MOST_CORNERS = 60;
    private static final int MOST_FLAWS = 50;

    private ClothShapeReader() {}

    /** The length at hand: as given, or as long as the outline is. */
    static OptionalDouble onHand(Section fabric, ClothShape shape) {
        return fabric.isSection(ON_HAND)
                ? shape.outline().stream().mapToDouble(o -> o.box().maxY()).findFirst()
                : fabric.length(ON_HAND, Limits.ON_HAND);
    }

    static ClothShape read(Section fabric, OptionalDouble usableWidth) {
        return read(fabric, usableWidth, Optional.empty());
    }

    /** @param usual strip at the selvage where none is told */
    static ClothShape read(Section fabric, OptionalDouble usableWidth, Optional<Double> usual) {
        Optional<Polygon> outline = outline(fabric, usableWidth);
        OptionalDouble selvage = fabric.length(SELVAGE, Limits.SELVAGE);
        if (outline.isPresent() && selvage.orElse(0) > 0) {
            fabric.add(
                    SELVAGE,
                    "stands beside a remnant's outline, which says where the cloth ends.",
                    "Leave one of them out.");
        }
        double strip = outline.isPresent() ? 0 : selvage.orElse(usual.orElse(0.0));
        return new ClothShape(outline, flaws(fabric, outline, usableWidth), strip);
    }

    private static Optional<Polygon> outline(Section fabric, OptionalDouble usableWidth) {
        if (!fabric.isSection(ON_HAND)) {
            return Optional.empty();
        }
        Section s = fabric.section(ON_HAND, List.of(OUTLINE)).orElseThrow();
        s.require(OUTLINE, OUTLINE_EXAMPLE);
        int before = s.problems();
        List<Point> points = corners(s);
        if (s.problems() > before || !s.has(OUTLINE)) {
            return Optional.empty();
        }
        if (points.size() < 3 || Polygon.signedArea(points) == 0) {
            s.add(OUTLINE, "encloses no cloth.", "List its corners in order, for example " + OUTLINE_EXAMPLE + ".");
            return Optional.empty();
        }
        Polygon outline = Polygon.either(points);
        if (!outline.isSimple()) {
            s.add(
                    OUTLINE,
                    "crosses or touches itself.",
                    "List the corners in the order in which they follow round it.");
            return Optional.empty();
        }
        if (usableWidth.isPresent() && outline.box().maxX() > usableWidth.getAsDouble()) {
            s.add(
                    OUTLINE,
                    "reaches " + s.shownLength(outline.box().maxX()) + " across, farther than the usable width.",
                    "Give a usable width of at least that.");
            return Optional.empty();
        }
        return Optional.of(outline);
    }

    /** Up to the first that is no corner, which is a finding. */
    private static List<Point> corners(Section s) {
        List<Point> out = new ArrayList<>();
        List<Tree> all =
                s.items(OUTLINE, OUTLINE_EXAMPLE).map(Tree.Items::items).orElse(List.of());
        if (all.size() > MOST_CORNERS) {
            s.add(OUTLINE, "lists " + all.size() + " of them.", "Give up to " + MOST_CORNERS + ".");
            return out;
        }
        for (Tree item : all) {
            List<Double> pair = item instanceof Tree.Items
                    ? s.alone(OUTLINE, item).lengths(OUTLINE, Limits.ON_CLOTH, 2)
                    : List.of();
            if (pair.size() != 2) {
                s.add(
                        OUTLINE,
                        "holds something that is not a pair of lengths.",
                        "Write for example: " + OUTLINE_EXAMPLE);
                return out;
            }
            out.add(new Point(pair.get(0), pair.get(1)));
        }
        return out;
    }

    /** One that does not touch the usable width, or the remnant's box, was measured from somewhere else. */
    private static List<Polygon> flaws(Section fabric, Optional<Polygon> outline, OptionalDouble usableWidth) {
        List<Polygon> out = new ArrayList<>();
        for (Section s : fabric.sections(FLAWS, FLAW, MOST_FLAWS, FLAW_EXAMPLE)) {
            FLAW.forEach(key -> s.require(key, "4"));
            OptionalDouble x = s.length("from left", Limits.ON_CLOTH);
            OptionalDouble y = s.length("from end", Limits.ON_CLOTH);
            OptionalDouble wide = s.length("wide", Limits.FLAW);
            OptionalDouble high = s.length("long", Limits.FLAW);
            if (x.isPresent() && y.isPresent() && wide.isPresent() && high.isPresent()) {
                double across = outline.map(o -> o.box().maxX()).orElse(usableWidth.orElse(Double.POSITIVE_INFINITY));
                double along = outline.map(o -> o.box().maxY()).orElse(Double.POSITIVE_INFINITY);
                if (x.getAsDouble() >= across) {
                    s.add("from left", "lies beyond the cloth, which is " + s.shownLength(across) + " wide.", FROM);
                } else if (y.getAsDouble() >= along) {
                    s.add("from end", "lies beyond the remnant, which is " + s.shownLength(along) + " long.", FROM);
                } else {
                    out.add(box(x.getAsDouble(), y.getAsDouble(), wide.getAsDouble(), high.getAsDouble()));
                }
            }
        }
        return out;
    }

    private static Polygon box(double x, double y, double wide, double high) {
        return new Polygon(new Box(x, y, x + wide, y + high).corners());
    }
}
