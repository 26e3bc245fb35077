package stretchwright.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Style.LayWay;

class RelayingTest {
    private static final Fabric CLOTH = LayingTest.cloth(1000, false);
    private static final List<Piece> PIECES = List.of(SamplePieces.rectangle("strip", 3, 300, 200));
    private static final Lay USUAL = LayingTest.lay(PIECES, CLOTH, LayWay.OPEN);
    private static final Relaying RELAYING = new Relaying(PIECES, CLOTH, LayTerms.of(LayWay.ANY));

    /** Side by side with 10 mm between them, but the last one moved. */
    private static Placed row(double dx, double dy) {
        List<Placed.Spot> spots = new ArrayList<>();
        for (Placed.Spot s : Placed.of(USUAL).spots()) {
            int i = spots.size();
            double left = OnCloth.outlines(USUAL, PIECES).get(i).box().minX();
            double low = OnCloth.outlines(USUAL, PIECES).get(i).box().minY();
            boolean last = i == 2;
            spots.add(s.at(s.x() - left + 310 * i + (last ? dx : 0), s.y() - low + (last ? dy : 0), s.rotation()));
        }
        return Placed.of(USUAL).put(spots);
    }

    private static List<Trouble> troubles(double dx, double dy) {
        return RELAYING.tried(USUAL, row(dx, dy)).orElseThrow().troubles();
    }

    @Test
    void whatOverlapsIsToldByTheLeastMoveThatEndsIt() {
        assertThat(troubles(0, 0)).isEmpty();
        assertThat(troubles(-10, 0)).as("touching").isEmpty();
        Trouble two = troubles(-12, 0).get(0);
        assertThat(two.kind()).isEqualTo(Trouble.Kind.OVERLAPS);
        assertThat(two.mm()).isEqualTo(2, within(0.02));
        assertThat(two.about(2)).isTrue();
        assertThat(two.about(1)).isTrue();
        assertThat(two.about(0)).isFalse();
        assertThat(troubles(-200, 195).get(0).mm()).isEqualTo(5, within(0.02));
    }

    @Test
    void whatReachesBeyondTheClothIsToldByHowFar() {
        Trouble beyond = troubles(90, 0).get(0);
        assertThat(beyond.kind()).isEqualTo(Trouble.Kind.BEYOND);
        assertThat(beyond.mm()).isEqualTo(10, within(0.02));
        assertThat(troubles(0, -3).get(0).mm()).isEqualTo(3, within(0.02));
    }

    @Test
    void twoThatOverlapAreNotToldToBeNearAsWell() {
        Relaying gap = new Relaying(PIECES, CLOTH, LayTerms.of(LayWay.ANY).gap(15));
        assertThat(gap.tried(USUAL, row(-12, 0)).orElseThrow().troubles())
                .extracting(Trouble::kind)
                .containsExactlyInAnyOrder(Trouble.Kind.NEAR, Trouble.Kind.OVERLAPS);
    }

    /** The first two stand 10 mm apart in each of these lays. */
    @Test
    void aLongerLayStandsOnlyWhereAPersonPutIt() {
        Placed hand = row(0, 500);
        assertThat(RELAYING.instead(USUAL, hand)).map(Lay::length).hasValue(700.0);
        assertThat(RELAYING.instead(USUAL, hand.byHand(false))).isEmpty();
        assertThat(RELAYING.instead(USUAL, Placed.of(USUAL))).map(Lay::length).hasValue(USUAL.length());
    }

    @Test
    void aLayOfOtherPiecesIsNone() {
        Relaying others =
                new Relaying(List.of(SamplePieces.rectangle("band", 3, 300, 200)), CLOTH, LayTerms.of(LayWay.ANY));
        assertThat(others.tried(USUAL, row(0, 0))).isEmpty();
        Relaying fewer =
                new Relaying(List.of(SamplePieces.rectangle("strip", 2, 300, 200)), CLOTH, LayTerms.of(LayWay.ANY));
        assertThat(fewer.tried(USUAL, row(0, 0)).orElseThrow().troubles())
                .extracting(Trouble::kind)
                .containsExactly(Trouble.Kind.OTHER);
    }
}
