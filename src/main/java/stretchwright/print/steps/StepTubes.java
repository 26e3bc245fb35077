package stretchwright.print.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Phrases;

/** Legs of one piece, closed along the inseam and laid flat: at each height half as wide as the piece. */
final class StepTubes {
    private static final int LEVELS = 40;
    /** Between the two legs below the crotch, mm. */
    private static final double APART = 12;

    private StepTubes() {}

    static Optional<StepAfter> of(StepPanels step, List<StepPanels.Meeting> meets) {
        List<StepAfter.Stroke> out = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            StepPanels.Meeting m = meets.get(Math.min(i, meets.size() - 1));
            List<Point> inside = inside(
                    step.sewn(m.one().get(0)).line(),
                    step.sewn(m.other().get(0)).line());
            if (inside.isEmpty()) {
                return Optional.empty();
            }
            tube(i == 0 ? inside : inside.stream().map(Point::mirrored).toList(), out);
        }
        return Optional.of(new StepAfter(out, Phrases.of("after.tubes")));
    }

    /** The seam, seen from the front, of the leg on the left of the picture; its outer fold is straight. */
    private static List<Point> inside(Path one, Path other) {
        double top = Math.min(high(one), high(other));
        double foot = Math.max(low(one), low(other));
        double widest = 0;
        List<Point> widths = new ArrayList<>();
        for (int i = 0; i <= LEVELS; i++) {
            double y = foot + (top - foot) * i / LEVELS;
            double a = one.alongAtHeight(y);
            double b = other.alongAtHeight(y);
            if (a >= 0 && b >= 0) {
                double half = Math.abs(one.at(a).x() - other.at(b).x()) / 2;
                widest = Math.max(widest, half);
                widths.add(new Point(half, y));
            }
        }
        if (widths.size() < 2) {
            return List.of();
        }
        double outer = -widest - APART / 2;
        List<Point> seam = new ArrayList<>();
        seam.add(new Point(outer, widths.get(0).y()));
        widths.forEach(w -> seam.add(new Point(outer + w.x(), w.y())));
        seam.add(new Point(outer, widths.get(widths.size() - 1).y()));
        return seam;
    }

    private static void tube(List<Point> outline, List<StepAfter.Stroke> out) {
        int last = outline.size() - 1;
        out.add(new StepAfter.Stroke(Ink.LABEL, List.of(outline.get(last), outline.get(0), outline.get(1)), false));
        out.add(new StepAfter.Stroke(Ink.CUT, outline.subList(1, last), false));
        out.add(new StepAfter.Stroke(Ink.MARK, List.of(outline.get(last - 1), outline.get(last)), false));
    }

    private static double high(Path line) {
        return line.points().stream().mapToDouble(Point::y).max().orElseThrow();
    }

    private static double low(Path line) {
        return line.points().stream().mapToDouble(Point::y).min().orElseThrow();
    }
}
