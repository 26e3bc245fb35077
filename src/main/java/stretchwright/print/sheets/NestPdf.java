package stretchwright.print.sheets;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygonal;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Document;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.Voice;
import stretchwright.pattern.Nest;
import stretchwright.pattern.Piece;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.LaidCloth;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Motion;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.SizeLine;
import stretchwright.print.kit.Writing;

/**
 * A nest at true scale on sheets of paper: each piece in all sizes over each other, each size in a line and on a layer of
 * its own, so that a reader prints one size alone.
 */
public final class NestPdf {
    private static final GeometryFactory SHAPES = new GeometryFactory();
    static final double LETTER = 2.8;
    /** Where along its cut line the first size is named, as a share; the others follow, over so much of the line. */
    private static final double FIRST = 0.04;

    private static final double NAMED = 0.9;
    /** Names of few sizes stay near each other. */
    private static final double NEAR = 0.1;

    private final NestJob job;
    private final String make;
    private final Fabric fabric;
    private final List<SizeLine> lines;

    private NestPdf(NestJob job) {
        this.job = job;
        make = Letters.shortened(job.make(), Letters.LONGEST_NAME);
        fabric = job.fabric();
        List<String> sizes = job.nest().sizes();
        lines = IntStream.range(0, sizes.size())
                .mapToObj(i -> new SizeLine(Letters.shortened(sizes.get(i), Letters.LONGEST_NAME), i))
                .toList();
    }

    public static Document of(NestJob job, Paper paper) {
        NestPdf it = new NestPdf(job);
        List<Sheeted> pieces = job.nest().pieces().stream()
                .map(p -> new Sheeted(Phrases.said(p.name().said()), it.outermost(p), it.drawing(p)::drawOn))
                .toList();
        Whose whose = new Whose(it.make, it.sizes(), job.fabric(), job.unit(), job.stops());
        String title = Phrases.of("nest.title-paper", it.make, paper.name());
        return TiledPdf.of(TiledPdf.fileName("nest", paper), title, whose, pieces, it.lines, paper);
    }

    /** "3 sizes, A to C"; one by its name. */
    private String sizes() {
        int n = lines.size();
        String first = lines.get(0).name();
        return n == 1
                ? first
                : Phrases.of(
                        "nest.wearers",
                        String.valueOf(n),
                        first,
                        lines.get(n - 1).name());
    }

    private Piece piece(Nest.Nested nested, int size) {
        return job.patterns().get(size).piece(nested.name());
    }

    private static Motion motion(Nest.Nested nested, int size) {
        return new Motion(0, Point.ORIGIN.minus(nested.anchors().get(size)));
    }

    /** What all sizes cover together; they share their anchor, so it is of one piece. */
    private Polygon outermost(Nest.Nested nested) {
        List<Geometry> all = new ArrayList<>();
        for (int size = 0; size < lines.size(); size++) {
            all.add(shape(motion(nested, size).apply(nested.cutLines().get(size).points())));
        }
        Geometry whole = UnaryUnionOp.union(all);
        Geometry one = whole.getNumGeometries() == 1 && whole instanceof Polygonal ? whole : whole.convexHull();
        Coordinate[] ring = ((org.locationtech.jts.geom.Polygon) one.getGeometryN(0))
                .getExteriorRing()
                .getCoordinates();
        List<Point> points = new ArrayList<>();
        for (int i = 0; i + 1 < ring.length; i++) {
            points.add(new Point(ring[i].x, ring[i].y));
        }
        if (!Orientation.isCCW(ring)) {
            Collections.reverse(points);
        }
        return new Polygon(points);
    }

    private static Geometry shape(List<Point> points) {
        Coordinate[] ring = new Coordinate[points.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Point p = points.get(i % points.size());
            ring[i] = new Coordinate(p.x(), p.y());
        }
        return SHAPES.createPolygon(ring);
    }

    private Drawing drawing(Nest.Nested nested) {
        Drawing drawing = new Drawing();
        for (int size = 0; size < lines.size(); size++) {
            Piece piece = piece(nested, size);
            Canvas there = motion(nested, size).on(drawing);
            SizeLine line = lines.get(size);
            there.in(line, () -> {
                PieceDrawing.lines(piece, there);
                name(piece, line, lines.size(), there);
            });
        }
        Piece first = piece(nested, 0);
        Canvas there = motion(nested, 0).on(drawing);
        PieceDrawing.words(first, LaidCloth.around(fabric), Optional.empty(), there);
        PieceDrawing.around(first, LaidCloth.most(fabric), motion(nested, 0), drawing, label(first));
        return drawing;
    }

    /** Along the size's own cut line, inside of it; no longer than up to where the next one's name may begin. */
    private static void name(Piece piece, SizeLine line, int sizes, Canvas canvas) {
        List<Point> run = PieceDrawing.cutRuns(piece).get(0);
        Path path = new Path(run);
        double next = path.length() * Math.min(NEAR, NAMED / sizes);
        double along = path.length() * FIRST + next * line.number();
        String name = shown(line.name(), next);
        Point direction = path.directionAt(along);
        boolean upright = direction.x() >= 0;
        double degrees = Math.toDegrees(StrictMath.atan2(direction.y(), direction.x()));
        Point at = path.at(along).plus(direction.left().times(upright ? 1 : 1 + 0.75 * LETTER));
        canvas.text(new Writing(Ink.LABEL, at, upright ? degrees : degrees - 180, LETTER, Writing.Align.MIDDLE, name));
    }

    /** As much of a name as fits between its place and the next one's. */
    static String shown(String name, double next) {
        return Letters.wrapped(name, LETTER, next - 2).get(0);
    }

    private List<String> label(Piece piece) {
        return List.of(
                Letters.shortened(Phrases.said(piece.name().said()), Letters.LONGEST_NAME) + ": "
                        + Voice.plain().say(piece.timesCut()),
                make,
                sizes(),
                Phrases.of("piece.cloth", job.cloth(piece.name())),
                Phrases.of(
                        "piece.stretch",
                        Amounts.percent(fabric.asLaid().test().stretchAcross()),
                        Amounts.percent(fabric.asLaid().test().stretchAlong())),
                Phrases.of("nest.taken"),
                PieceLabel.allowance(piece),
                Phrases.of("piece.date"));
    }
}
