package stretchwright.print.cloth;

import java.util.List;
import java.util.stream.Stream;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Point;
import stretchwright.lay.Lay;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Phrases;

/** The edges of the cloth as it is spread: folds, ends of the usable width, and where a second layer ends; mm of cloth. */
record ClothEdges(List<Line> lines, List<Label> labels) {
    ClothEdges {
        lines = List.copyOf(lines);
        labels = List.copyOf(labels);
    }

    record Line(Ink ink, Point from, Point to) {}

    /**
     * What an edge is, written upright beside the cloth.
     *
     * @param left beside the left edge of the cloth, else the right
     * @param middle at this height
     */
    record Label(boolean left, double middle, String words) {}

    static ClothEdges of(Lay lay, Fabric fabric) {
        double w = lay.fabricWidth();
        double h = lay.spreadLength();
        return switch (lay.method()) {
            case OPEN -> throughout(Ink.CUT, Phrases.of("edge.left"), Phrases.of("edge.right"), w, h);
            case FOLDED -> throughout(Ink.FOLD, Phrases.of("edge.fold"), Phrases.of("edge.both"), w, h);
            case FOLDED_CROSSWISE ->
                throughout(Ink.CUT, Phrases.of("edge.left-fold-beyond"), Phrases.of("edge.right-two-layers"), w, h)
                        .and(line(Ink.FOLD, 0, h, w, h));
            case FOLDED_OFF_THE_MIDDLE ->
                throughout(Ink.FOLD, Phrases.of("edge.fold"), Phrases.of("edge.two-layers-to-line"), w, h)
                        .and(line(Ink.MARK, lay.doubled(), 0, lay.doubled(), h));
            case PART_FOLDED -> partFolded(lay, fabric.roll().usableWidth() / 2);
        };
    }

    private static ClothEdges throughout(Ink leftInk, String left, String right, double w, double h) {
        return new ClothEdges(
                List.of(line(leftInk, 0, 0, 0, h), line(Ink.CUT, w, 0, w, h)),
                List.of(new Label(true, h / 2, left), new Label(false, h / 2, right)));
    }

    private ClothEdges and(Line more) {
        return new ClothEdges(Stream.concat(lines.stream(), Stream.of(more)).toList(), labels);
    }

    private static ClothEdges partFolded(Lay lay, double half) {
        double w = lay.fabricWidth();
        double h = lay.spreadLength();
        double d = lay.doubled();
        return new ClothEdges(
                List.of(
                        line(Ink.FOLD, 0, 0, 0, d),
                        line(Ink.CUT, half, 0, half, d),
                        line(Ink.MARK, 0, d, w, d),
                        line(Ink.CUT, 0, d, 0, h),
                        line(Ink.CUT, w, d, w, h)),
                List.of(
                        new Label(true, d / 2, Phrases.of("edge.fold")),
                        new Label(true, (d + h) / 2, Phrases.of("edge.left")),
                        new Label(false, (d + h) / 2, Phrases.of("edge.right-one-layer"))));
    }

    private static Line line(Ink ink, double x0, double y0, double x1, double y1) {
        return new Line(ink, new Point(x0, y0), new Point(x1, y1));
    }
}
