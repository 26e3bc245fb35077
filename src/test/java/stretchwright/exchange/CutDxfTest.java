package stretchwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import stretchwright.exchange.DxfReader.Entity;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.make.ExampleHandovers;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Piece;

/** pattern-cut.dxf read back from scratch, against every piece of every example. */
class CutDxfTest {
    private double worst;

    @Test
    void everyPieceIsThereWholeAsOftenAsItIsCut() {
        int outlines = 0;
        for (Handover handover : ExampleHandovers.all().values()) {
            DxfReader dxf = DxfReader.read(CutDxf.of(handover.pattern()));
            assertThat(dxf.blocks).isEmpty();
            assertThat(dxf.entities)
                    .allMatch(e -> e.layer().equals("CUT")
                            ? e.type().equals("POLYLINE") && e.closed()
                            : Set.of("NOTCH", "NOTCH_DOUBLE").contains(e.layer())
                                    && e.type().equals("LINE"));
            List<List<Point>> cut = dxf.entities.stream()
                    .filter(e -> e.layer().equals("CUT"))
                    .map(Entity::points)
                    .toList();
            int i = 0;
            for (Piece piece : handover.pattern().pieces()) {
                for (int copy = 0; copy < piece.cut(); copy++) {
                    boolean mirrored = piece.mirrored() && copy % 2 == 1;
                    same(cut.get(i++), whole(piece, mirrored), piece);
                }
            }
            assertThat(cut).hasSize(i);
            outlines += i;
            apart(cut);
            notches(handover, dxf, cut);
        }
        System.out.printf("exchange: %d outlines to cut, no corner farther off than %.4f mm%n", outlines, worst);
        assertThat(outlines).isGreaterThan(80);
        assertThat(worst).isLessThan(0.001);
    }

    /** The corners of the piece and, where it lies on the fold, of its other half. */
    private static List<Point> whole(Piece piece, boolean mirrored) {
        List<Point> out = new ArrayList<>(piece.cutLine().points());
        if (piece.onFold()) {
            piece.cutLine().points().forEach(p -> out.add(p.mirrored()));
        }
        return mirrored ? out.stream().map(Point::mirrored).toList() : out;
    }

    private void same(List<Point> read, List<Point> drafted, Piece piece) {
        Box there = Box.around(drafted);
        Box here = Box.around(read);
        Point move = new Point(there.minX() - here.minX(), there.minY() - here.minY());
        worst = Math.max(worst, Off.asSets(read.stream().map(p -> p.plus(move)).toList(), drafted));
        assertThat(Polygon.either(read).area()).isCloseTo(piece.clothArea(), within(0.5));
        assertThat(Polygon.either(read).isSimple()).as(piece.name().word()).isTrue();
    }

    private static void apart(List<List<Point>> cut) {
        List<Geometry> shapes = cut.stream().map(CutDxfTest::shape).toList();
        for (int i = 0; i < shapes.size(); i++) {
            for (int j = i + 1; j < shapes.size(); j++) {
                assertThat(shapes.get(i).distance(shapes.get(j))).isGreaterThanOrEqualTo(9.99);
            }
        }
    }

    /** Each from a cut line inwards, short; as many as the pieces have, a double one two. */
    private static void notches(Handover handover, DxfReader dxf, List<List<Point>> cut) {
        int expected = 0;
        for (Piece piece : handover.pattern().pieces()) {
            for (Notch notch : piece.notches()) {
                int ticks = notch.mark() == Notch.Mark.DOUBLE ? 2 : 1;
                boolean again = piece.onFold() && Math.abs(notch.at().x()) > 0.001;
                expected += piece.cut() * ticks * (again ? 2 : 1);
            }
        }
        List<Entity> ticks =
                dxf.entities.stream().filter(e -> !e.layer().equals("CUT")).toList();
        assertThat(ticks).hasSize(expected);
        for (Entity tick : ticks) {
            Point from = tick.points().get(0);
            Point to = tick.points().get(1);
            List<Point> own = cut.stream()
                    .min((a, b) -> Double.compare(Off.line(from, a), Off.line(from, b)))
                    .orElseThrow();
            assertThat(Off.line(from, own)).isLessThan(0.001);
            assertThat(from.distance(to)).isBetween(0.99, 5.01);
            assertThat(Polygon.either(own).contains(to)).isTrue();
        }
    }

    private static Geometry shape(List<Point> outline) {
        List<Coordinate> ring = new ArrayList<>();
        outline.forEach(p -> ring.add(new Coordinate(p.x(), p.y())));
        ring.add(ring.get(0));
        return new GeometryFactory().createPolygon(ring.toArray(Coordinate[]::new));
    }
}
