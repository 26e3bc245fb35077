package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.Legs;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.body.Side;
import stretchwright.body.Stance;
import stretchwright.body.Value;
import stretchwright.boot.SampleBoot;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.ground.RandomStream;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Seam;
import stretchwright.pattern.WhichLeg;

/** Legs that differ, hard sockets, and wearers who sit. Invented bodies. */
class TwoLegsTest {
    static Body body(Map<Measure, Double> left, Map<Measure, Double> right, Map<Side, Set<Measure>> hard) {
        Body one = SampleBody.smallAdult();
        Legs legs = new Legs(Map.of(Side.LEFT, values(left), Side.RIGHT, values(right)), hard);
        return new Body(one.figure(), one.age(), Stance.STANDING, one.values(), legs);
    }

    private static Map<Measure, Value> values(Map<Measure, Double> mm) {
        Map<Measure, Value> out = new EnumMap<>(Measure.class);
        mm.forEach((m, v) -> out.put(m, new Value(v, Value.Origin.GIVEN, 3)));
        return out;
    }

    private static Pattern draft(Body body) {
        return DraftTest.draft(body, SampleFabric.heavyKnit(), Optional.of(SampleBoot.figure()), DraftTest.OVER_BOOT);
    }

    @Test
    void twoLegsGiveALeftAndARightPieceThatMeetAtTheRise() {
        Body body = body(
                Map.of(Measure.THIGH_GIRTH, 590.0, Measure.CALF_GIRTH, 360.0, Measure.KNEE_HEIGHT, 463.0),
                Map.of(Measure.THIGH_GIRTH, 550.0, Measure.CALF_GIRTH, 344.0, Measure.KNEE_HEIGHT, 455.0),
                Map.of());
        Pattern pattern = draft(body);
        assertThat(pattern.legs()).extracting(p -> p.name().word()).containsExactly("left leg", "right leg");
        assertThat(pattern.legs()).allSatisfy(p -> assertThat(p.cut()).isEqualTo(1));
        sewn(pattern);
        Level left = level(pattern, WhichLeg.LEFT);
        Level right = level(pattern, WhichLeg.RIGHT);
        assertThat(left.width() / right.width()).isCloseTo(360.0 / 344, within(0.015));
    }

    @Tag("slow")
    @Test
    void randomPairsOfLegsCanAlwaysBeSewnTogether() {
        for (int seed = 1; seed <= 300; seed++) {
            RandomStream random = RandomStream.of(seed, "legs");
            Body one = SampleBody.random(seed);
            Map<Side, Map<Measure, Value>> own = new EnumMap<>(Side.class);
            for (Side side : Side.values()) {
                Map<Measure, Double> mm = new EnumMap<>(Measure.class);
                for (Measure m :
                        List.of(Measure.THIGH_GIRTH, Measure.MID_THIGH_GIRTH, Measure.KNEE_GIRTH, Measure.CALF_GIRTH)) {
                    mm.put(m, one.mm(m) * random.between(0.94, 1.06));
                }
                mm.put(Measure.CROTCH_HEIGHT, one.mm(Measure.CROTCH_HEIGHT) * random.between(0.99, 1.01));
                own.put(side, values(mm));
            }
            Body body = new Body(one.figure(), one.age(), Stance.STANDING, one.values(), new Legs(own, Map.of()));
            Findings findings = new Findings("seed " + seed);
            Optional<Pattern> pattern = Draft.of(
                    body,
                    SampleFabric.heavyKnit(),
                    Optional.of(SampleBoot.scaled(one.mm(Measure.HEEL_GIRTH) / 305)),
                    DraftTest.OVER_BOOT,
                    findings);
            assertThat(findings.all()).as("seed " + seed).isEmpty();
            sewn(pattern.orElseThrow());
        }
    }

    static void sewn(Pattern pattern) {
        for (Seam seam : pattern.seams()) {
            if (seam.role() != Seam.Role.WAISTBAND_JOIN) {
                assertThat(seam.ease()).as(seam.name().word()).isCloseTo(0, within(0.5));
            }
        }
    }

    private static Level level(Pattern pattern, WhichLeg leg) {
        return pattern.levels().stream()
                .filter(l -> l.name() == Level.Name.CALF && l.leg() == leg)
                .findFirst()
                .orElseThrow();
    }

    /** A hard socket gets no reduction: the cloth there is as wide as the socket, to the half millimetre. */
    @Test
    void aHardSocketIsNotSqueezed() {
        Set<Measure> socket = Set.of(Measure.CALF_GIRTH);
        Pattern pattern = draft(body(Map.of(Measure.CALF_GIRTH, 340.0), Map.of(), Map.of(Side.LEFT, socket)));
        assertThat(level(pattern, WhichLeg.LEFT).width()).isCloseTo(340, within(0.5));
        assertThat(level(pattern, WhichLeg.RIGHT).width()).isCloseTo(350 * (1 - 0.1304), within(2.5));
    }

    /** Common practice, no source: back 30 to 50 mm higher, front 15 to 30 mm lower, and a longer leg. */
    @Test
    void aSeatedWearerGetsMoreBehindLessInFrontAndALongerLeg() {
        Body standing = SampleBody.smallAdult();
        Body seated = new Body(standing.figure(), standing.age(), Stance.SITTING, standing.values(), Legs.ALIKE);
        Piece before = draft(standing).piece(PieceName.of(PieceKind.LEG));
        Piece after = draft(seated).piece(PieceName.of(PieceKind.LEG));
        double front = after.edge(EdgeName.FRONT_CROTCH).length()
                - before.edge(EdgeName.FRONT_CROTCH).length();
        double back = after.edge(EdgeName.BACK_CROTCH).length()
                - before.edge(EdgeName.BACK_CROTCH).length();
        assertThat(front).isBetween(-30.0, -10.0);
        assertThat(back).isBetween(30.0, 50.0);
        assertThat(after.edge(EdgeName.FRONT_INSEAM).length())
                .isGreaterThan(before.edge(EdgeName.FRONT_INSEAM).length());
    }
}
