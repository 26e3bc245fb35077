package stretchwright.print;

import java.util.List;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Point;
import stretchwright.lay.Lay;

/**
 * The edges of the cloth as it is spread: folds and selvages, and where a second layer ends; mm of cloth.
 *
 * @param left what the left edge is, written at its middle
 * @param leftMiddle at this height
 */
record ClothEdges(List<Line> lines, String left, double leftMiddle, String right, double rightMiddle) {
    ClothEdges {
        lines = List.copyOf(lines);
    }

    record Line(Ink ink, Point from, Point to) {}

    static ClothEdges of(Lay lay, Fabric fabric) {
        double w = lay.fabricWidth();
        double h = lay.spreadLength();
        double d = lay.doubled();
        return switch (lay.method()) {
            case OPEN ->
                new ClothEdges(
                        List.of(line(Ink.CUT, 0, 0, 0, h), line(Ink.CUT, w, 0, w, h)),
                        Phrases.of("edge.left"),
                        h / 2,
                        Phrases.of("edge.right"),
                        h / 2);
            case FOLDED ->
                new ClothEdges(
                        List.of(line(Ink.FOLD, 0, 0, 0, h), line(Ink.CUT, w, 0, w, h)),
                        Phrases.of("edge.fold"),
                        h / 2,
                        Phrases.of("edge.both"),
                        h / 2);
            case FOLDED_CROSSWISE ->
                new ClothEdges(
                        List.of(line(Ink.CUT, 0, 0, 0, h), line(Ink.CUT, w, 0, w, h), line(Ink.FOLD, 0, h, w, h)),
                        Phrases.of("edge.left-fold-beyond"),
                        h / 2,
                        Phrases.of("edge.right-two-layers"),
                        h / 2);
            case FOLDED_OFF_THE_MIDDLE ->
                new ClothEdges(
                        List.of(line(Ink.FOLD, 0, 0, 0, h), line(Ink.CUT, w, 0, w, h), line(Ink.MARK, d, 0, d, h)),
                        Phrases.of("edge.fold"),
                        h / 2,
                        Phrases.of("edge.two-layers-to-line"),
                        h / 2);
            case PART_FOLDED -> {
                double half = fabric.usableWidth() / 2;
                yield new ClothEdges(
                        List.of(
                                line(Ink.FOLD, 0, 0, 0, d),
                                line(Ink.CUT, half, 0, half, d),
                                line(Ink.MARK, 0, d, w, d),
                                line(Ink.CUT, 0, d, 0, h),
                                line(Ink.CUT, w, d, w, h)),
                        Phrases.of("edge.fold"),
                        d / 2,
                        Phrases.of("edge.right-one-layer"),
                        (d + h) / 2);
            }
        };
    }

    private static Line line(Ink ink, double x0, double y0, double x1, double y1) {
        return new Line(ink, new Point(x0, y0), new Point(x1, y1));
    }
}
