package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.boot.SampleBoot;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Voice;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.Notch;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;

/** Two long edges are sewn together from one pair of notches to the next: none is missing, none is apart. */
class NotchGapsTest {
    private static final int BODIES = 150;

    private static final Pattern SOUND =
            DraftTest.draft(SampleBody.smallAdult(), SampleFabric.heavyKnit(), Optional.empty(), DraftTest.ANKLE);

    @Tag("slow")
    @ParameterizedTest
    @EnumSource(Style.Leg.class)
    void noGapOfAnyBodyIsOver200Millimetres(Style.Leg leg) {
        Fabric fabric = SampleFabric.heavyKnit();
        double most = 0;
        int drafted = 0;
        for (int seed = 1; seed <= BODIES; seed++) {
            Body body = SampleBody.random(seed);
            var boot = Optional.of(SampleBoot.scaled(body.mm(Measure.HEEL_GIRTH) / 305));
            for (Style style :
                    List.of(Style.usual(leg), Style.usual(leg).with(PartsPropertyTest.parts(seed, body, false)))) {
                Optional<Pattern> pattern = Draft.of(body, fabric, boot, style, new Findings("seed " + seed));
                if (pattern.isPresent()) {
                    drafted++;
                    most = Math.max(most, NotchGaps.largest(pattern.get()));
                    assertThat(NotchGaps.broken(pattern.get()))
                            .as(leg + " seed " + seed)
                            .isEmpty();
                    pattern.get().pieces().forEach(p -> eachNameOnceToAnEdge(p));
                }
            }
        }
        System.out.printf("notches, %s: %d drafts, largest gap %.1f mm%n", leg, drafted, most);
        assertThat(drafted).isGreaterThan(BODIES);
        assertThat(most).isBetween(60.0, 200.5);
    }

    /** Nested sizes and sewing steps find a notch by its name. */
    private static void eachNameOnceToAnEdge(Piece piece) {
        Set<String> seen = new TreeSet<>();
        for (Notch n : piece.notches()) {
            assertThat(seen.add(n.edge() + " " + n.name()))
                    .as(piece.name() + ": " + n.edge() + " " + n.name())
                    .isTrue();
        }
    }

    /** The same again without the check's own reckoning: places on the paper, measured along the drawn edge. */
    @Test
    void theInseamOfAnAdultIsWalkedInFiveSteps() {
        Piece leg = SOUND.legs().get(0);
        List<Notch> front = on(leg, EdgeName.FRONT_INSEAM);
        List<Notch> back = on(leg, EdgeName.BACK_INSEAM);
        assertThat(front)
                .extracting(Notch::name)
                .containsExactly(
                        NotchName.BELOW_CROTCH,
                        NotchName.MID_THIGH,
                        NotchName.KNEE,
                        NotchName.CALF,
                        NotchName.BELOW_CALF);
        assertThat(front.get(0).along()).isCloseTo(100, within(0.01));
        for (int i = 0; i < front.size(); i++) {
            Notch one = front.get(i);
            Notch other = back.get(i);
            assertThat(other.name()).isEqualTo(one.name());
            assertThat(other.along()).isCloseTo(leg.edge(EdgeName.FRONT_INSEAM).length() - one.along(), within(0.05));
        }
    }

    private static List<Notch> on(Piece leg, EdgeName edge) {
        return leg.notches().stream().filter(n -> n.edge() == edge).toList();
    }

    @Test
    void theRisesMeetAtTheHipLineFrontSingleBackDouble() {
        Piece leg = SOUND.legs().get(0);
        double hip = SOUND.level(Level.Name.HIP).orElseThrow().height();
        for (EdgeName edge : List.of(EdgeName.FRONT_CROTCH, EdgeName.BACK_CROTCH)) {
            Notch notch = on(leg, edge).stream()
                    .filter(n -> n.name() == NotchName.HIP)
                    .findFirst()
                    .orElseThrow();
            assertThat(notch.at().y()).isCloseTo(hip, within(0.05));
            assertThat(notch.mark()).isEqualTo(edge == EdgeName.FRONT_CROTCH ? Notch.Mark.SINGLE : Notch.Mark.DOUBLE);
        }
    }

    private static Pattern without(Predicate<Notch> gone) {
        List<Piece> pieces = new ArrayList<>(SOUND.pieces());
        Piece leg = pieces.get(0);
        pieces.set(0, leg.with(leg.notches().stream().filter(gone.negate()).toList(), leg.marks()));
        return new Pattern(pieces, SOUND.seams(), SOUND.levels(), SOUND.reductions());
    }

    private static List<String> broken(Pattern pattern) {
        return NotchGaps.broken(pattern).stream()
                .map(b -> Voice.plain().say(b.said()))
                .toList();
    }

    @Test
    void aMissingPairIsFoundAndSoIsAMissingHalf() {
        assertThat(broken(SOUND)).isEmpty();
        double whole = NotchGaps.largest(SOUND);
        for (Pattern pattern : List.of(
                without(n -> n.name() == NotchName.KNEE || n.name() == NotchName.CALF),
                without(n -> n.edge() == EdgeName.BACK_INSEAM
                        && (n.name() == NotchName.KNEE || n.name() == NotchName.CALF)))) {
            assertThat(NotchGaps.largest(pattern)).isGreaterThan(whole + 50);
            assertThat(broken(pattern))
                    .singleElement()
                    .asString()
                    .startsWith("inseam: ")
                    .endsWith(" mm from one notch to the next");
        }
        assertThat(DraftCheck.broken(SampleBody.smallAdult(), DraftTest.ANKLE, without(n -> true)))
                .extracting(b -> Voice.plain().say(b.said()))
                .anyMatch(b -> b.startsWith("inseam: "));
    }

    @Test
    void ofTwoLegsTheRisesAreNotchedAlike() {
        Body body = TwoLegsTest.body(
                Map.of(Measure.THIGH_GIRTH, 610.0, Measure.CALF_GIRTH, 360.0, Measure.KNEE_HEIGHT, 463.0),
                Map.of(Measure.THIGH_GIRTH, 540.0, Measure.CALF_GIRTH, 344.0, Measure.KNEE_HEIGHT, 445.0),
                Map.of());
        Pattern pattern = DraftTest.draft(body, SampleFabric.heavyKnit(), Optional.empty(), DraftTest.ANKLE);
        Seam rise = pattern.seam(Seam.Role.BACK_RISE).orElseThrow();
        assertThat(rise.sides().get(0).piece()).isNotEqualTo(rise.sides().get(1).piece());
        assertThat(broken(pattern)).isEmpty();
    }
}
