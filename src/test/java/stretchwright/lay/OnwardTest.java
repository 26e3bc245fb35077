package stretchwright.lay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Grid;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.LayClock;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Piece;
import stretchwright.pattern.SamplePattern;
import stretchwright.pattern.Style.LayWay;

@Tag("slow")
class OnwardTest {
    private static final Fabric CLOTH = SampleFabric.heavyKnit();
    private static final List<Piece> PIECES = SamplePattern.overBoot().pieces();
    private static final Effort SOME = new Effort(40, 15);

    private static Lay quick(Fabric cloth, LayTerms terms) {
        Findings findings = new Findings("test");
        List<Lay> ways = Laying.ways(PIECES, cloth, terms, Optional.empty(), SearchWork.of(1, Effort.NONE), findings);
        assertThat(findings.all()).isEmpty();
        return ways.get(0);
    }

    private static Lay shorter(Fabric cloth, LayTerms terms, Lay from, Set<String> pinned) {
        return new Onward(PIECES, cloth, terms).shorter(from, pinned, 7, SOME, LayClock.NONE);
    }

    @Test
    void aLongLayBecomesMuchShorterAndHolds() {
        LayTerms terms = LayTerms.of(LayWay.ANY);
        Lay from = stacked(quick(CLOTH, terms), terms);
        Lay to = shorter(CLOTH, terms, from, Set.of());
        assertThat(to.length()).isLessThan(0.7 * from.length());
        assertThat(LayCheck.faults(PIECES, CLOTH, terms, to)).isEmpty();
        assertThat(to.floor()).isEqualTo(from.floor());
    }

    @Test
    void whatIsPinnedStaysAndTheOthersGoRoundIt() {
        LayTerms terms = LayTerms.of(LayWay.ANY).gap(5);
        Lay from = quick(CLOTH, terms);
        Lay up = stacked(from, terms);
        Lay.Placement pinned = up.placements().get(up.placements().size() - 1);
        Lay to = shorter(CLOTH, terms, up, Set.of(Placed.id(pinned)));
        assertThat(to.placements()).contains(pinned);
        assertThat(LayCheck.faults(PIECES, CLOTH, terms, to)).isEmpty();
        assertThat(to.length()).isLessThanOrEqualTo(up.length());
    }

    /** The same pieces one after the other up the cloth: a long lay that holds. */
    private static Lay stacked(Lay lay, LayTerms terms) {
        List<Placed.Spot> spots = new ArrayList<>();
        double y = 0;
        for (Placed.Spot s : Placed.of(lay).spots()) {
            Polygon outline = OnCloth.outlines(lay, PIECES).get(spots.size());
            spots.add(s.at(s.x(), Grid.snap(s.y() + y - outline.box().minY()), s.rotation()));
            y = Grid.snap(y + outline.box().height() + 6);
        }
        Relaying.Tried tried = new Relaying(PIECES, CLOTH, terms)
                .tried(lay, Placed.of(lay).put(spots))
                .orElseThrow();
        assertThat(tried.troubles()).isEmpty();
        return tried.lay();
    }

    @Test
    void everyWayOfLayingIsGoneOnWith() {
        for (LayWay way : LayWay.values()) {
            LayTerms terms = LayTerms.of(way).tilt(2);
            if (way == LayWay.FOLDED_CROSSWISE && !new Permitted(PIECES, CLOTH, terms).crosswise()) {
                continue;
            }
            Lay from = quick(CLOTH, terms);
            Lay to = shorter(CLOTH, terms, from, Set.of());
            assertThat(LayCheck.faults(PIECES, CLOTH, terms, to)).as(way.name()).isEmpty();
            assertThat(to.length()).as(way.name()).isLessThanOrEqualTo(from.length());
            assertThat(to.method()).isEqualTo(from.method());
        }
    }

    @Test
    void flawsAndARemnantAreKeptClearOf() {
        double w = CLOTH.roll().usableWidth();
        Polygon remnant =
                new Polygon(List.of(new Point(0, 0), new Point(w, 0), new Point(w, 2400), new Point(0, 2600)));
        Polygon flaw = new Polygon(
                List.of(new Point(300, 300), new Point(340, 300), new Point(340, 360), new Point(300, 360)));
        for (LayWay way : List.of(LayWay.OPEN, LayWay.FOLDED)) {
            LayTerms terms = LayTerms.of(way);
            Fabric cloth = CLOTH.with(new ClothShape(Optional.of(remnant), List.of(flaw)));
            Lay from = quick(cloth, terms);
            Lay to = shorter(cloth, terms, from, Set.of());
            assertThat(LayCheck.faults(PIECES, cloth, terms, to)).as(way.name()).isEmpty();
            assertThat(to.length()).isLessThanOrEqualTo(from.length());
        }
    }

    @Test
    void theSameSeedGivesTheSameLay() {
        LayTerms terms = LayTerms.of(LayWay.ANY);
        Lay from = stacked(quick(CLOTH, terms), terms);
        assertThat(shorter(CLOTH, terms, from, Set.of())).isEqualTo(shorter(CLOTH, terms, from, Set.of()));
    }
}
