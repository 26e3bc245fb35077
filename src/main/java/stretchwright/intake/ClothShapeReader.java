package stretchwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.fabric.ClothShape;
import stretchwright.ground.Box;
import stretchwright.ground.Part;
import stretchwright.ground.Polygon;

/** The cloth as it is: a remnant's outline, and flaws; x from the left edge, y from the cut end. */
final class ClothShapeReader {
    private ClothShapeReader() {}

    /** The length at hand: as given, or as long as the outline is. */
    static OptionalDouble onHand(Given given, RollKeys roll, ClothShape shape) {
        return given.isSection(roll.onHand)
                ? shape.outline().stream().mapToDouble(o -> o.box().maxY()).findFirst()
                : Row.unboxed(given.get(roll.onHand));
    }

    /** @param usual strip at the selvage where none is told */
    static ClothShape read(Given given, RollKeys roll, OptionalDouble usableWidth, Optional<Double> usual) {
        Optional<Polygon> outline = given.get(roll.outline).filter(o -> onCloth(given, roll, o, usableWidth));
        Optional<Double> selvage = given.get(roll.selvage);
        if (outline.isPresent() && selvage.orElse(0.0) > 0) {
            given.add(roll.selvage, Tell.said("selvage.remnant"), Tell.said("one-out"));
        }
        double strip = outline.isPresent() ? 0 : selvage.or(() -> usual).orElse(0.0);
        return new ClothShape(outline, flaws(given, roll, outline, usableWidth), strip);
    }

    private static boolean onCloth(Given given, RollKeys roll, Polygon outline, OptionalDouble usableWidth) {
        if (usableWidth.isPresent() && outline.box().maxX() > usableWidth.getAsDouble()) {
            given.add(
                    roll.outline,
                    Tell.said("outline.wide", Part.written(outline.box().maxX())),
                    Tell.said("outline.wider"));
            return false;
        }
        return true;
    }

    /** One that does not touch the usable width, or the remnant's box, was measured from somewhere else. */
    private static List<Polygon> flaws(
            Given given, RollKeys roll, Optional<Polygon> outline, OptionalDouble usableWidth) {
        double across = outline.map(o -> o.box().maxX()).orElse(usableWidth.orElse(Double.POSITIVE_INFINITY));
        double along = outline.map(o -> o.box().maxY()).orElse(Double.POSITIVE_INFINITY);
        List<Polygon> out = new ArrayList<>();
        for (Given flaw : given.each(roll.flaws)) {
            box(flaw).filter(b -> beside(flaw, b, across, along)).ifPresent(b -> out.add(new Polygon(b.corners())));
        }
        return out;
    }

    private static Optional<Box> box(Given flaw) {
        Optional<Double> x = flaw.get(RollKeys.FROM_LEFT);
        Optional<Double> y = flaw.get(RollKeys.FROM_END);
        Optional<Double> wide = flaw.get(RollKeys.WIDE);
        Optional<Double> high = flaw.get(RollKeys.LONG);
        return x.isPresent() && y.isPresent() && wide.isPresent() && high.isPresent()
                ? Optional.of(new Box(x.get(), y.get(), x.get() + wide.get(), y.get() + high.get()))
                : Optional.empty();
    }

    private static boolean beside(Given flaw, Box box, double across, double along) {
        if (box.minX() >= across) {
            flaw.add(RollKeys.FROM_LEFT, Tell.said("flaw.beside", Part.written(across)), Tell.said("flaw.from"));
        } else if (box.minY() >= along) {
            flaw.add(RollKeys.FROM_END, Tell.said("flaw.beyond", Part.written(along)), Tell.said("flaw.from"));
        } else {
            return true;
        }
        return false;
    }
}
