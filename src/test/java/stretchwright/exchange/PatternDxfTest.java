package stretchwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stretchwright.exchange.DxfReader.Entity;
import stretchwright.ground.Point;
import stretchwright.make.ExampleHandovers;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Nest;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Piece;
import stretchwright.pattern.SampleNest;
import stretchwright.pattern.Style;

/** pattern.dxf read back from scratch, against every piece of every example. */
class PatternDxfTest {
    /** Three decimals are written: half a thousandth each way. */
    private static final double EXACT = 0.001;

    private double worst;

    @Test
    void everyPieceIsABlockWithItsLinesOnTheLayersOfTheConvention() {
        int pieces = 0;
        for (Handover handover : ExampleHandovers.all().values()) {
            DxfReader dxf = DxfReader.read(PatternDxf.of(handover));
            assertThat(dxf.header).containsEntry("$ACADVER", "AC1009").containsEntry("$INSUNITS", "4");
            List<Piece> all = handover.pattern().pieces();
            assertThat(dxf.blocks).hasSameSizeAs(all);
            List<List<Entity>> blocks = new ArrayList<>(dxf.blocks.values());
            for (int i = 0; i < all.size(); i++) {
                lines(all.get(i), blocks.get(i));
                words(handover, all.get(i), blocks.get(i));
                pieces++;
            }
            inserts(dxf);
            assertThat(dxf.layers).containsAll(used(dxf)).doesNotHaveDuplicates();
        }
        System.out.printf("exchange: %d pieces in pattern.dxf, no corner farther off than %.4f mm%n", pieces, worst);
        assertThat(pieces).isGreaterThan(50);
        assertThat(worst).isLessThan(EXACT);
    }

    /** A block for each piece in each size; inserted, their common points lie on each other. */
    @Test
    void theSizesOfANestLieOverEachOther() {
        List<Nest.Size> sizes = SampleNest.sizes(Style.Leg.OVER_BOOT, 1, 3);
        Nest nest = Nest.of(sizes);
        List<Handover> handovers = sizes.stream()
                .map(s -> new Handover(s.pattern(), "Team", s.name(), "Knit", Map.of(), 0.6, 0.45))
                .toList();
        DxfReader dxf = DxfReader.read(PatternDxf.of(nest, handovers));
        List<String> names = new ArrayList<>(dxf.blocks.keySet());
        List<Entity> inserts =
                dxf.entities.stream().filter(e -> e.type().equals("INSERT")).toList();
        assertThat(inserts).hasSameSizeAs(names);
        assertThat(names).hasSize(3 * nest.pieces().size());
        int at = 0;
        for (Nest.Nested nested : nest.pieces()) {
            Point common = inserts.get(at).points().get(0).plus(nested.anchors().get(0));
            for (int s = 0; s < 3; s++) {
                List<Entity> block = Objects.requireNonNull(dxf.blocks.get(names.get(at)));
                lines(sizes.get(s).pattern().piece(nested.name()), block);
                assertThat(block)
                        .extracting(Entity::text)
                        .contains("Size: " + sizes.get(s).name());
                assertThat(inserts.get(at).tags()).containsEntry(2, names.get(at));
                Point there =
                        inserts.get(at).points().get(0).plus(nested.anchors().get(s));
                assertThat(there.distance(common)).isLessThan(2 * EXACT);
                at++;
            }
        }
        assertThat(worst).isLessThan(EXACT);
    }

    private void lines(Piece piece, List<Entity> block) {
        List<Entity> boundary = on(block, "1", "POLYLINE");
        assertThat(boundary).hasSize(1);
        assertThat(boundary.get(0).closed()).isTrue();
        same(boundary.get(0).points(), piece.cutLine().points());
        sewLine(piece, on(block, "14", "POLYLINE"));
        List<Entity> grain = on(block, "7", "LINE");
        assertThat(grain).hasSize(1);
        same(grain.get(0).points(), List.of(piece.grain().from(), piece.grain().to()));
        assertThat(on(block, "6", "LINE")).hasSize(piece.onFold() ? 1 : 0);
        on(block, "6", "LINE").forEach(f -> assertThat(f.points()).allMatch(p -> p.x() == 0));
        marks(piece, block);
        notches(piece, on(block, "4", "POINT"));
        turnsAndCurves(block);
    }

    /** All of it off the fold. */
    private void sewLine(Piece piece, List<Entity> sewn) {
        List<Point> drafted = piece.sewLine().points();
        assertThat(sewn).hasSize(1);
        assertThat(sewn.get(0).closed()).isEqualTo(!piece.onFold());
        worst = Math.max(worst, Off.asSets(sewn.get(0).points(), drafted));
        double length = length(sewn.get(0));
        double edges = piece.edges().stream()
                .filter(e -> !(piece.onFold() && e.line().points().stream().allMatch(p -> p.x() == 0)))
                .mapToDouble(e -> e.length())
                .sum();
        assertThat(length).isCloseTo(edges, within(0.05));
    }

    private static double length(Entity line) {
        double sum = 0;
        List<Point> p = line.points();
        for (int i = line.closed() ? 0 : 1; i < p.size(); i++) {
            sum += p.get(i).distance(p.get((i + p.size() - 1) % p.size()));
        }
        return sum;
    }

    private void marks(Piece piece, List<Entity> block) {
        List<Entity> internal = on(block, "8", "POLYLINE");
        List<Mark> drawn =
                piece.marks().stream().filter(m -> m.kind() != Mark.Kind.EYELET).toList();
        assertThat(internal).hasSameSizeAs(drawn);
        for (int i = 0; i < drawn.size(); i++) {
            worst = Math.max(
                    worst,
                    Off.asSets(internal.get(i).points(), drawn.get(i).line().points()));
        }
        assertThat(on(block, "13", "POINT")).hasSize(piece.marks().size() - drawn.size());
    }

    /** On the cut line, straight out from the place on the sew line, and not so deep that the seam is cut. */
    private void notches(Piece piece, List<Entity> read) {
        int i = 0;
        for (Notch notch : piece.notches()) {
            double allowance = piece.edge(notch.edge()).allowance();
            boolean onFold = piece.onFold() && Math.abs(notch.at().x()) < 0.001;
            Point outward = onFold ? new Point(0, Math.signum(notch.outward().y())) : notch.outward();
            for (double aside : notch.mark() == Notch.Mark.DOUBLE ? new double[] {2, -2} : new double[] {0}) {
                Point sewn = notch.at().plus(outward.left().times(aside));
                if (piece.onFold() && sewn.x() * piece.cutLine().box().centre().x() < 0) {
                    continue; // beyond the fold: the other half's
                }
                Entity cut = read.get(i++);
                Point at = cut.points().get(0);
                worst = Math.max(worst, Off.line(at, piece.cutLine().points()));
                worst = Math.max(worst, Math.abs(at.minus(sewn).cross(outward)));
                double out = at.minus(sewn).dot(outward);
                assertThat(out).as(notch.name().word()).isCloseTo(allowance, within(1.0));
                assertThat(cut.number(39)).isBetween(0.5, 5.001).isLessThan(Math.max(1.01, allowance));
                Point way = new Point(1, 0).turned(cut.number(50));
                assertThat(way.dot(outward)).isCloseTo(-1, within(1e-4));
            }
        }
        assertThat(read).hasSize(i);
    }

    /** Every corner of a boundary, sew or internal line is either a turn point or a curve point. */
    private static void turnsAndCurves(List<Entity> block) {
        Set<Point> corners = new HashSet<>();
        Stream.of("1", "8", "14").forEach(l -> on(block, l, "POLYLINE").forEach(e -> corners.addAll(e.points())));
        Set<Point> points = new HashSet<>();
        Stream.of("2", "3").forEach(l -> on(block, l, "POINT").forEach(e -> points.addAll(e.points())));
        assertThat(points).isEqualTo(corners);
        assertThat(on(block, "2", "POINT")).hasSizeGreaterThanOrEqualTo(6);
    }

    private static void words(Handover handover, Piece piece, List<Entity> block) {
        List<String> system = on(block, "1", "TEXT").stream().map(Entity::text).toList();
        assertThat(system)
                .contains("Piece Name: " + piece.name(), "Quantity: " + piece.cut())
                .contains("Size: " + handover.wearer())
                .contains("Material: " + handover.clothOf(piece));
        String said = String.join(
                "\n", on(block, "15", "TEXT").stream().map(Entity::text).toList());
        assertThat(said)
                .contains("fabric stretch: across " + Math.round(100 * handover.stretchAcross()))
                .contains("taken off the body: across ")
                .contains("allowance ");
        piece.notches().forEach(n -> assertThat(said).contains(n.name().word()));
        piece.marks().forEach(m -> assertThat(said).contains(m.name().word()));
    }

    private static void inserts(DxfReader dxf) {
        List<Entity> inserts =
                dxf.entities.stream().filter(e -> e.type().equals("INSERT")).toList();
        assertThat(inserts).extracting(e -> e.tags().get(2)).containsExactlyElementsOf(dxf.blocks.keySet());
        assertThat(dxf.entities.stream().map(Entity::text)).contains("Units: METRIC");
    }

    private static Set<String> used(DxfReader dxf) {
        Set<String> out = new HashSet<>();
        dxf.blocks.values().forEach(b -> b.forEach(e -> out.add(e.layer())));
        dxf.entities.forEach(e -> out.add(e.layer()));
        return out;
    }

    private void same(List<Point> read, List<Point> drafted) {
        worst = Math.max(worst, Off.inOrder(read, drafted));
    }

    private static List<Entity> on(List<Entity> block, String layer, String type) {
        return block.stream()
                .filter(e -> e.layer().equals(layer) && e.type().equals(type))
                .toList();
    }
}
