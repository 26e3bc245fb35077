package stretchwright.print.steps;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Box;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Folded;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Piece;
import stretchwright.print.kit.Phrases;

/**
 * A piece as a step shows it, whole and outside up; the second one of a pair is its mirror image.
 *
 * @param sewn what this step is about, in the order of its letters
 */
record StepPanel(Piece piece, boolean mirrored, List<Sewn> sewn) {
    /** Around what is sewn so much of the piece is shown: a share of its size, and at least so many mm. */
    private static final double AROUND = 0.25;

    private static final double AT_LEAST = 30;
    /** A window that leaves out less than this share of the piece's height is not worth a cut through the piece. */
    private static final double WORTH = 0.7;

    /** A matching mark as it lies on the piece as shown. */
    record Tick(String name, Point at, Point outward, boolean twice) {}

    /**
     * An edge that is sewn, where it lies on the piece as shown.
     *
     * @param edge as the piece has it; of a piece on the fold one half
     * @param forward whether the line runs with the piece on its left
     */
    record Sewn(String letter, Edge edge, Path line, boolean forward, List<Tick> ticks) {
        /** A unit vector away from the piece. */
        Point outward(double along) {
            Point left = line.directionAt(along).left();
            return forward ? left.times(-1) : left;
        }
    }

    List<Point> outline() {
        return shown((piece.onFold() ? Folded.whole(piece) : piece.cutLine()).points());
    }

    Box whole() {
        return Box.around(outline());
    }

    Point middle() {
        return whole().centre();
    }

    String name() {
        String name = Phrases.said(piece.name().said());
        return mirrored ? Phrases.of("picture.other", name) : name;
    }

    boolean shows(Edge edge) {
        return sewn.stream().anyMatch(s -> s.edge().equals(edge));
    }

    /** What of the piece is drawn: all of it, or where only a small part is sewn, that part and what is around it. */
    Box window() {
        Box all = whole();
        Box part = Box.around(
                sewn.stream().flatMap(s -> s.line().points().stream()).toList());
        double margin = Math.max(AT_LEAST, AROUND * Math.max(part.width(), part.height()));
        Box wide = part.grown(margin);
        Box cut = new Box(
                Math.max(all.minX(), wide.minX()),
                Math.max(all.minY(), wide.minY()),
                Math.min(all.maxX(), wide.maxX()),
                Math.min(all.maxY(), wide.maxY()));
        return cut.height() < WORTH * all.height() ? cut : all;
    }

    /** Whether what is sewn lies left of the middle. */
    boolean sewnOnLeft() {
        double at = sewn.stream()
                .mapToDouble(s -> s.line().at(s.line().length() / 2).x())
                .average()
                .orElse(0);
        return at < middle().x();
    }

    StepPanel with(String letter, Edge edge) {
        List<Sewn> more = new ArrayList<>(sewn);
        more.add(sewn(letter, edge, shows(edge)));
        return new StepPanel(piece, mirrored, more);
    }

    /** @param again the edge of the other half of a piece on the fold */
    private Sewn sewn(String letter, Edge edge, boolean again) {
        Path line = edge.line();
        boolean turned = mirrored;
        if (piece.onFold()) {
            line = again ? otherHalf(line) : whole(line);
        }
        List<Tick> ticks = new ArrayList<>();
        for (Notch n : piece.notches()) {
            if (n.edge() == edge.name()) {
                Tick tick = new Tick(Phrases.said(n.name().said()), n.at(), n.outward(), n.mark() == Notch.Mark.DOUBLE);
                if (!again) {
                    ticks.add(tick);
                }
                if (piece.onFold() && n.at().x() != 0) {
                    ticks.add(new Tick(
                            Phrases.said(n.name().said()),
                            n.at().mirrored(),
                            n.outward().mirrored(),
                            n.mark() == Notch.Mark.DOUBLE));
                }
            }
        }
        List<Tick> seen = ticks.stream()
                .map(t -> mirrored ? new Tick(t.name, t.at.mirrored(), t.outward.mirrored(), t.twice) : t)
                .toList();
        return new Sewn(letter, edge, new Path(shown(line.points())), !turned, seen);
    }

    private List<Point> shown(List<Point> points) {
        return mirrored ? points.stream().map(Point::mirrored).toList() : points;
    }

    private static Path otherHalf(Path line) {
        return new Path(line.reversed().points().stream().map(Point::mirrored).toList());
    }

    /** Both halves of an edge that begins or ends at the fold. */
    private static Path whole(Path half) {
        boolean begins = half.start().x() == 0;
        boolean ends = half.end().x() == 0;
        if (begins == ends) {
            return half;
        }
        List<Point> all = new ArrayList<>(begins ? otherHalf(half).points() : half.points());
        List<Point> rest = begins ? half.points() : otherHalf(half).points();
        all.addAll(rest.subList(1, rest.size()));
        return new Path(all);
    }
}
