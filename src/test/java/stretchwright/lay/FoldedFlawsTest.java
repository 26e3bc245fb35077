package stretchwright.lay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.RandomStream;
import stretchwright.lay.nest.Gaps;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Names;
import stretchwright.pattern.Piece;
import stretchwright.pattern.SamplePattern;
import stretchwright.pattern.Style.LayWay;

/** Flaws and remnants on cloth that is folded off the middle: the left part lies below, a flaw counts in either layer. */
class FoldedFlawsTest {
    private static final LayTerms OFF = LayTerms.of(LayWay.FOLDED_OFF_THE_MIDDLE);

    private static Polygon box(double x0, double y0, double x1, double y1) {
        return new Polygon(List.of(new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1)));
    }

    private static Piece pair(String name, double width, double height) {
        Piece one = SamplePieces.rectangle(name, 2, width, height);
        return Piece.of(Names.piece(name), 2, true, false, one.edges(), one.grain(), List.of(), List.of());
    }

    private static Lay lay(Optional<Polygon> outline, Polygon... flaws) {
        Fabric cloth = LayingTest.cloth(1000, true).with(new ClothShape(outline, List.of(flaws)));
        List<Piece> pieces = List.of(pair("leg", 400, 700), SamplePieces.rectangle("panel", 1, 200, 700));
        Lay lay = WaysTest.ways(pieces, cloth, OFF).get(0);
        assertThat(lay.method()).isEqualTo(Lay.Method.FOLDED_OFF_THE_MIDDLE);
        return lay;
    }

    /**
     * By hand: on 1000 mm folded at 400 the pair lies double from the fold, the panel on the 200 beyond, 700 long. A flaw
     * 20 mm high at the cut end of the cloth moves what lies on it up by 20: at 100 to 110 it lies in the lower layer,
     * at 500 in the upper one, both under the pair; at 900 under the panel.
     */
    @Test
    void aFlawInEitherLayerIsLaidRound() {
        assertThat(lay(Optional.empty()).length()).isEqualTo(700);
        for (double x : new double[] {100, 395, 500, 900}) {
            Lay lay = lay(Optional.empty(), box(x, 0, x + 10, 20));
            assertThat(lay.length()).as("flaw at %.0f", x).isEqualTo(720);
            assertThat(lay.placements().get(0).y()).as("leg, flaw at %.0f", x).isEqualTo(x < 800 ? 20 : 0);
            assertThat(lay.placements().get(1).y()).as("panel, flaw at %.0f", x).isEqualTo(x < 800 ? 0 : 20);
        }
    }

    /** By hand: a remnant with nothing but right angles is the whole cloth; without its lower left corner the pair moves up. */
    @Test
    void whatARemnantLacksOnTheLeftIsLackingInTheLowerLayer() {
        assertThat(lay(Optional.of(box(0, 0, 1000, 900))).length()).isEqualTo(700);
        Polygon notched = new Polygon(List.of(
                new Point(50, 0),
                new Point(1000, 0),
                new Point(1000, 900),
                new Point(0, 900),
                new Point(0, 30),
                new Point(50, 30)));
        Lay lay = lay(Optional.of(notched));
        assertThat(lay.placements().get(0).y()).isEqualTo(30);
        assertThat(lay.placements().get(1).y()).isZero();
    }

    /** Curved legs round random flaws, each layer unfolded again and held against the flaws by the geometry library. */
    @Tag("slow")
    @Test
    void nothingUnfoldsOntoAFlaw() {
        List<Piece> leggings = SamplePattern.overBoot().pieces();
        for (int seed = 0; seed < 4; seed++) {
            RandomStream random = new RandomStream(seed);
            List<Polygon> flaws = new ArrayList<>();
            for (int i = 0; i < 12; i++) {
                double x = random.between(0, 1500);
                double y = random.between(0, 1500);
                flaws.add(box(x, y, x + 25, y + 40));
            }
            Fabric cloth = LayingTest.cloth(1600, false).with(new ClothShape(Optional.empty(), flaws));
            Piece patch = SamplePieces.rectangle("patch", 1, 180, 500);
            List<Piece> pieces = List.of(SamplePieces.curvedLeg(random), leggings.get(1), leggings.get(2), patch);
            Lay lay = WaysTest.ways(pieces, cloth, OFF).get(0);
            assertThat(lay.method()).isEqualTo(Lay.Method.FOLDED_OFF_THE_MIDDLE);
            for (int i = 0; i < lay.placements().size(); i++) {
                for (Polygon onCloth : unfolded(lay, pieces, i)) {
                    Geometry piece = Gaps.geometry(onCloth);
                    flaws.forEach(
                            f -> assertThat(piece.intersection(Gaps.geometry(f)).getArea())
                                    .isLessThan(0.5));
                }
            }
        }
    }

    /** Where a placement is cut from the cloth lying open: x from its left edge. */
    private static List<Polygon> unfolded(Lay lay, List<Piece> pieces, int i) {
        Polygon spread = OnCloth.outlines(lay, pieces).get(i);
        double fold = lay.doubled();
        List<Polygon> out = new ArrayList<>(List.of(spread.placed(false, 0, new Point(fold, 0))));
        if (lay.placements().get(i).layers() == 2) {
            out.add(spread.placed(true, 0, new Point(fold, 0)));
        }
        return out;
    }
}
