package stretchwright.lay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Findings;
import stretchwright.ground.RandomStream;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.LayClock;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Piece;
import stretchwright.pattern.SamplePattern;
import stretchwright.pattern.Style.LayWay;

/** Whatever is searched for on cloth ends when the clock says stop, with what was found until then. */
class EverySearchStopsTest {
    private static final List<Piece> LEGGINGS = SamplePattern.overBoot().pieces();
    private static final Fabric CLOTH = LayingTest.cloth(1470, false);
    private static final LayTerms ANY = LayTerms.of(LayWay.ANY);
    /** More questions than this after the first stop, and some search goes on that should not have begun. */
    private static final int FEW = 60;

    /** Stops from a question on, and counts those after it. */
    private static final class Asked {
        private final AtomicInteger count = new AtomicInteger();
        private final int last;

        Asked(int last) {
            this.last = last;
        }

        LayClock clock() {
            return LayClock.of(() -> count.get() > last, () -> count.incrementAndGet() > last);
        }

        void mustBeAnswered(String what) {
            assertThat(count.get() - last).as("%s, %d", what, last).isBetween(1, FEW);
        }
    }

    /** LayCheck has passed each of them. */
    @Test
    void aLayIsThereWheneverItIsStopped() {
        double whole = Laying.lay(LEGGINGS, CLOTH, ANY, 1, new Findings("test"))
                .orElseThrow()
                .length();
        for (int last : new int[] {0, 1, 2, 5, 20, 100, 500, 2000}) {
            Asked asked = new Asked(last);
            Findings findings = new Findings("test");
            Lay lay =
                    Laying.lay(LEGGINGS, CLOTH, ANY, 1, asked.clock(), findings).orElseThrow();
            asked.mustBeAnswered("lay");
            assertThat(findings.all()).isEmpty();
            assertThat(lay.length()).isGreaterThanOrEqualTo(whole).isGreaterThanOrEqualTo(lay.floor());
        }
    }

    @Test
    void soAreAnEstimateTheWidthsAndTheClothOnHand() {
        Fabric little = CLOTH.with(
                new Fabric.Roll("remnant", 1470, OptionalDouble.of(800), true, 0, Optional.empty(), ClothShape.WHOLE));
        Lay lay = Laying.lay(LEGGINGS, little, LayTerms.of(LayWay.FOLDED), 1, new Findings("test"))
                .orElseThrow();
        for (int last : new int[] {0, 3, 50}) {
            Asked estimate = new Asked(last);
            assertThat(Laying.estimate(LEGGINGS, CLOTH, ANY, 1, estimate.clock()))
                    .isPresent();
            estimate.mustBeAnswered("estimate");
            Asked widths = new Asked(last);
            assertThat(ClothWidths.of(LEGGINGS, CLOTH, ANY, 1, Buying.Counter.METRIC, widths.clock())
                            .rows())
                    .allMatch(r -> r.turned().isPresent() && r.oneWay().isPresent());
            assertThat(widths.count.get() - last).isBetween(1, 7 * FEW);
            Asked onHand = new Asked(last);
            assertThat(OnHand.of(lay, LEGGINGS, little, LayTerms.of(LayWay.FOLDED), 1, onHand.clock()))
                    .isPresent();
            assertThat(onHand.count.get() - last).isBetween(1, 2 * FEW);
        }
    }

    /** Tables after the stop are filled by the first lays; the parts of the time are not asked any more. */
    @Test
    void aClubIsLaidToItsEnd() {
        List<ClubLay.Garment> legs = IntStream.rangeClosed(1, 6)
                .mapToObj(i -> new ClubLay.Garment("g" + i, List.of(SamplePieces.curvedLeg(new RandomStream(i)))))
                .toList();
        for (int last : new int[] {0, 10, 40}) {
            Asked asked = new Asked(last);
            LayClock beside = asked.clock();
            List<Double> parts = new ArrayList<>();
            Findings findings = new Findings("test");
            List<ClubLay.Table> tables = ClubLay.lay(
                    legs,
                    LayingTest.cloth(1200, true),
                    LayTerms.of(LayWay.OPEN),
                    OptionalDouble.of(4500),
                    new SearchWork(
                            1,
                            Effort.UNLIMITED,
                            ClubClock.of(
                                    (from, to) -> {
                                        parts.add(to);
                                        return beside;
                                    },
                                    beside)),
                    findings);
            assertThat(findings.all()).isEmpty();
            assertThat(tables.stream().flatMap(t -> t.garments().stream())).containsExactlyElementsOf(legs);
            assertThat(asked.count.get() - last).isBetween(1, 4 * FEW);
            assertThat(last > 0 || parts.isEmpty()).isTrue();
        }
    }
}
