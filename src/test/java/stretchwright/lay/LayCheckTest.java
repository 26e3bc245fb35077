package stretchwright.lay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Grid;
import stretchwright.ground.RandomStream;
import stretchwright.pattern.Piece;
import stretchwright.pattern.SamplePattern;
import stretchwright.pattern.Style.LayWay;

class LayCheckTest {
    private static final Fabric CLOTH = SampleFabric.heavyKnit();
    private static final List<Piece> PIECES = SamplePattern.overBoot().pieces();
    private static final Lay OPEN = LayingTest.lay(PIECES, CLOTH, LayWay.OPEN);
    private static final Lay FOLDED = LayingTest.lay(PIECES, CLOTH, LayWay.FOLDED);

    private static Lay with(Lay lay, double length, List<Lay.Placement> placements) {
        return new Lay(lay.method(), lay.fabricWidth(), length, lay.buy(), lay.use(), lay.floor(), placements);
    }

    private static Lay replaced(Lay lay, int index, Lay.Placement placement) {
        List<Lay.Placement> placements = new ArrayList<>(lay.placements());
        placements.set(index, placement);
        return with(lay, lay.length(), placements);
    }

    private static Lay.Placement moved(Lay.Placement p, double dx, double dy) {
        return new Lay.Placement(
                p.piece(),
                p.copy(),
                Grid.snap(p.x() + dx),
                Grid.snap(p.y() + dy),
                p.rotation(),
                p.mirrored(),
                p.unfolded(),
                p.layers(),
                p.fromSelvage().stream().map(s -> Grid.snap(s + dx)).toList());
    }

    private static List<String> faults(Lay lay) {
        return LayCheck.faults(PIECES, CLOTH, lay);
    }

    /** Random layouts, about half of them valid; JTS 1.20 measures the shared area. */
    @Test
    void findsTheSameOverlapsAsTheAreaOfTheIntersection() {
        int overlapping = 0;
        int free = 0;
        for (int seed = 0; seed < 300; seed++) {
            RandomStream random = new RandomStream(seed);
            List<Lay.Placement> placements = new ArrayList<>();
            for (Lay.Placement p : OPEN.placements()) {
                boolean move = random.below(3) == 0;
                placements.add(
                        move ? moved(p, Grid.snap(random.between(-80, 80)), Grid.snap(random.between(0, 900))) : p);
            }
            Lay lay = with(OPEN, OPEN.length(), placements);
            List<Polygon> outlines = LayingTest.outlines(PIECES, lay);
            int shared = 0;
            for (int i = 0; i < outlines.size(); i++) {
                for (int j = 0; j < i; j++) {
                    shared += outlines.get(i).intersection(outlines.get(j)).getArea() > 1e-3 ? 1 : 0;
                }
            }
            long found =
                    faults(lay).stream().filter(f -> f.contains("overlaps")).count();
            assertThat(found).as("seed %d", seed).isEqualTo(shared);
            overlapping += shared > 0 ? 1 : 0;
            free += shared > 0 ? 0 : 1;
        }
        assertThat(overlapping).isGreaterThan(50);
        assertThat(free).isGreaterThan(50);
    }

    /** The lay ends where a piece ends: one unit more in any outward direction is beyond the cloth. */
    @Test
    void oneHundredthOfAMillimetreBeyondTheClothIsAFault() {
        assertThat(faults(with(OPEN, OPEN.length() - 0.01, OPEN.placements())))
                .anyMatch(f -> f.endsWith("reaches beyond the cloth"));
        assertThat(faults(replaced(OPEN, 0, moved(OPEN.placements().get(0), -1500, 0))))
                .contains("leg 1 reaches beyond the cloth");
    }

    @Test
    void aCrookedGrainIsAFault() {
        Lay.Placement p = OPEN.placements().get(0);
        Lay.Placement crooked = new Lay.Placement(
                p.piece(),
                1,
                p.x(),
                p.y(),
                0,
                false,
                false,
                1,
                List.of(p.fromSelvage().get(0), 12.0));
        assertThat(faults(replaced(OPEN, 0, crooked))).anyMatch(f -> f.startsWith("the grain of leg 1"));
    }

    @Test
    void twoLeftLegsAreAFault() {
        Lay.Placement p = OPEN.placements().get(1);
        Lay.Placement plain = new Lay.Placement(p.piece(), 2, p.x(), p.y(), 0, false, false, 1, p.fromSelvage());
        assertThat(faults(replaced(OPEN, 1, plain)))
                .contains("leg: 2 as drawn and 0 mirrored are cut, wanted are 2 in mirrored pairs");
    }

    @Test
    void aMissingCopyIsAFault() {
        List<Lay.Placement> fewer = OPEN.placements().subList(0, 4);
        assertThat(faults(with(OPEN, OPEN.length(), fewer)))
                .containsExactly("cuff: 1 as drawn and 0 mirrored are cut, wanted are 2");
    }

    @Test
    void upsideDownOnOneWayClothIsAFault() {
        Lay.Placement p = OPEN.placements().get(3);
        Lay.Placement turned =
                new Lay.Placement(p.piece(), p.copy(), p.x(), p.y(), 180, false, false, 1, p.fromSelvage());
        assertThat(faults(replaced(OPEN, 3, turned))).contains("cuff 1 is turned by 180.0 degrees");
    }

    @Test
    void aFoldPieceOffTheFoldIsAFault() {
        assertThat(faults(replaced(FOLDED, 1, moved(FOLDED.placements().get(1), 0.01, 0))))
                .contains("waistband 1 does not lie on the fold");
    }
}
