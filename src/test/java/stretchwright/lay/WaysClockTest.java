package stretchwright.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Findings;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.LayClock;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Piece;
import stretchwright.pattern.SamplePattern;
import stretchwright.pattern.Style.LayWay;

/** Several ways, or stretches, under one clock. */
class WaysClockTest {
    private static final List<Piece> LEGGINGS = SamplePattern.overBoot().pieces();

    private final List<double[]> parts = new ArrayList<>();
    private final List<AtomicInteger> asked = new ArrayList<>();

    /** A part of the time is over when its clock was asked that often. */
    private LayClock part(double from, double to, int questions) {
        AtomicInteger count = new AtomicInteger();
        parts.add(new double[] {from, to});
        asked.add(count);
        return LayClock.of(() -> count.get() >= questions / 2, () -> count.incrementAndGet() > questions);
    }

    private List<Lay> ways(LayTerms terms, int questions) {
        Findings findings = new Findings("test");
        List<Lay> lays = Laying.ways(
                LEGGINGS,
                LayingTest.cloth(1470, true),
                terms,
                Optional.empty(),
                new SearchWork(1, Effort.UNLIMITED, (from, to) -> part(from, to, questions)),
                findings);
        assertThat(findings.all()).isEmpty();
        return lays;
    }

    private void theyFillTheWholeAndAllAreAsked() {
        assertThat(parts.get(0)[0]).isZero();
        assertThat(parts.get(parts.size() - 1)[1]).isEqualTo(1);
        for (int i = 0; i < parts.size(); i++) {
            double share = parts.get(i)[1] - parts.get(i)[0];
            assertThat(share).isCloseTo(1.0 / parts.size(), within(1e-9));
            assertThat(i == 0 || Math.abs(parts.get(i)[0] - parts.get(i - 1)[1]) < 1e-9)
                    .isTrue();
            assertThat(asked.get(i).get()).as("part %d", i).isPositive();
        }
    }

    @Test
    void eachWayThatIsSearchedHasItsShareOfTheTime() {
        List<Lay> lays = ways(LayTerms.of(LayWay.ANY), 20);
        assertThat(lays).hasSizeGreaterThan(2);
        assertThat(parts).hasSizeGreaterThan(2);
        theyFillTheWholeAndAllAreAsked();
    }

    /** Two stretches, and one where the band lies in the folded stretch too and nothing is left for an open one. */
    @Test
    void eachStretchOfAPartFoldedLayHasItsShareOfTheTime() {
        ways(LayTerms.of(LayWay.PART_FOLDED), 20);
        assertThat(parts).hasSize(3);
        theyFillTheWholeAndAllAreAsked();
    }

    @Test
    void layingOffTheGrainHasHalfOfTheTime() {
        ways(new LayTerms(LayWay.OPEN, 0, 1, Optional.empty()), 20);
        assertThat(parts).hasSize(2);
        theyFillTheWholeAndAllAreAsked();
    }

    /** Time makes it shorter where it is not yet at the floor, in more ways than the first. */
    @Test
    void moreThanOneWayIsMadeShorter() {
        List<Lay> quick = ways(LayTerms.of(LayWay.ANY), 0);
        List<Lay> longer = ways(LayTerms.of(LayWay.ANY), 20_000);
        long shorter = longer.get(0).ways().stream()
                .filter(way -> quick.get(0).ways().stream()
                        .anyMatch(q -> q.method() == way.method() && q.length() > way.length()))
                .count();
        assertThat(shorter).isGreaterThan(1);
    }
}
