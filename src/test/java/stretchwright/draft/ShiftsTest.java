package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.body.Body;
import stretchwright.body.SampleBody;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Shift;
import stretchwright.pattern.Shifts;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/** What a maker moves by hand moves where it was moved, by what it was moved, and nothing that is sewn goes wrong. */
class ShiftsTest {
    private static final Body BODY = SampleBody.smallAdult();
    private static final Style ANKLE = TopStyles.ankle(TopEnd.band(45));
    private static final Pattern PLAIN = draft(Shifts.NONE);

    private static Pattern draft(Shifts shifts) {
        return DraftTest.draft(BODY, SampleFabric.heavyKnit(), Optional.empty(), ANKLE.with(shifts));
    }

    private static Piece leg(Pattern pattern) {
        return pattern.legs().get(0);
    }

    private static double widthAt(Pattern pattern, Level.Name level) {
        return pattern.level(level).orElseThrow().width();
    }

    @Test
    void aCrotchPointMovesOutAndItsInseamWithItDownToTheKnee() {
        Pattern moved = draft(Shifts.of(Shift.BACK_CROTCH_POINT, 10));
        Point before = leg(PLAIN).edge(EdgeName.BACK_CROTCH).line().start();
        Point after = leg(moved).edge(EdgeName.BACK_CROTCH).line().start();
        // so far out on the crotch line; then the point slides down its inseam until both are equally long
        assertThat(after.x() - before.x()).isCloseTo(10, within(2.0));
        assertThat(leg(moved).edge(EdgeName.BACK_CROTCH).length()
                        - leg(PLAIN).edge(EdgeName.BACK_CROTCH).length())
                .as("the back seam is as much longer")
                .isCloseTo(10, within(1.0));
        assertThat(widthAt(moved, Level.Name.CROTCH) - widthAt(PLAIN, Level.Name.CROTCH))
                .isBetween(7.0, 10.0);
        assertThat(widthAt(moved, Level.Name.MID_THIGH) - widthAt(PLAIN, Level.Name.MID_THIGH))
                .isBetween(4.0, 6.0);
        assertThat(widthAt(moved, Level.Name.KNEE)).isCloseTo(widthAt(PLAIN, Level.Name.KNEE), within(0.05));
        assertThat(leg(moved).edge(EdgeName.FRONT_CROTCH).line().start().y())
                .as("centre front stays")
                .isCloseTo(leg(PLAIN).edge(EdgeName.FRONT_CROTCH).line().start().y(), within(1.0));
    }

    @Test
    void theCrotchLineGoesDownAndTheWaistStays() {
        Pattern moved = draft(Shifts.of(Shift.CROTCH_LINE, 8));
        assertThat(PLAIN.crotchLine() - moved.crotchLine()).isCloseTo(8, within(0.02));
        for (EdgeName edge : List.of(EdgeName.FRONT_CROTCH, EdgeName.BACK_CROTCH)) {
            assertThat(leg(moved).edge(edge).length() - leg(PLAIN).edge(edge).length())
                    .as(edge.word())
                    .isCloseTo(8, within(2.5));
        }
        assertThat(moved.level(Level.Name.WAIST).orElseThrow().height())
                .isCloseTo(PLAIN.level(Level.Name.WAIST).orElseThrow().height(), within(1.0));
    }

    @Test
    void theWaistEdgeAtTheSideMovesAlone() {
        Pattern moved = draft(Shifts.of(Shift.SIDE_WAIST, -12));
        Path before = leg(PLAIN).edge(EdgeName.WAIST_EDGE).line();
        Path after = leg(moved).edge(EdgeName.WAIST_EDGE).line();
        assertThat(after.start().distance(before.start())).isLessThan(0.02);
        assertThat(after.end().distance(before.end())).isLessThan(0.02);
        assertThat(moved.level(Level.Name.WAIST).orElseThrow().height()
                        - PLAIN.level(Level.Name.WAIST).orElseThrow().height())
                .isCloseTo(-12, within(0.02));
    }

    @ParameterizedTest
    @EnumSource(
            value = Shift.class,
            names = {"FRONT_MID_THIGH", "BACK_MID_THIGH", "FRONT_KNEE", "BACK_KNEE", "FRONT_CALF", "BACK_CALF"})
    void anEdgeAtALevelMovesOutByWhatWasAsked(Shift shift) {
        Pattern moved = draft(Shifts.of(shift, 6));
        Level.Name level = shift.level().orElseThrow();
        assertThat(widthAt(moved, level) - widthAt(PLAIN, level)).isCloseTo(6, within(0.1));
        EdgeName other = shift.word().startsWith("front") ? EdgeName.BACK_INSEAM : EdgeName.FRONT_INSEAM;
        double height = PLAIN.level(level).orElseThrow().height();
        Path line = leg(moved).edge(other).line();
        Path as = leg(PLAIN).edge(other).line();
        assertThat(line.at(line.alongAtHeight(height)).x())
                .as("the other edge stays")
                .isCloseTo(as.at(as.alongAtHeight(height)).x(), within(0.1));
    }

    @ParameterizedTest
    @EnumSource(
            value = Shift.class,
            names = {"FRONT_HIP", "BACK_HIP"})
    void theCentreSeamMovesOutAtTheHipAndStaysAtTheWaist(Shift shift) {
        Pattern moved = draft(Shifts.of(shift, 8));
        assertThat(widthAt(moved, Level.Name.HIP) - widthAt(PLAIN, Level.Name.HIP))
                .as("both legs")
                .isCloseTo(16, within(0.3));
        EdgeName edge = shift == Shift.FRONT_HIP ? EdgeName.FRONT_CROTCH : EdgeName.BACK_CROTCH;
        Path before = leg(PLAIN).edge(edge).line();
        Path after = leg(moved).edge(edge).line();
        double was =
                shift == Shift.FRONT_HIP ? before.start().x() : before.end().x();
        double is = shift == Shift.FRONT_HIP ? after.start().x() : after.end().x();
        assertThat(is).isCloseTo(was, within(0.6));
    }

    @Test
    void theHemGoesDownAllRoundOrAtTheSideOnly() {
        Pattern lower = draft(Shifts.of(Shift.HEM, 15));
        double hem = PLAIN.level(Level.Name.HEM).orElseThrow().height();
        assertThat(hem - lower.level(Level.Name.HEM).orElseThrow().height()).isCloseTo(15, within(0.02));
        Pattern side = draft(Shifts.of(Shift.SIDE_HEM, 5));
        Path edge = leg(side).edge(EdgeName.HEM).line();
        assertThat(edge.start().y()).isCloseTo(hem, within(0.02));
        double lowest = edge.points().stream().mapToDouble(Point::y).min().orElseThrow();
        assertThat(hem - lowest).isCloseTo(5, within(0.02));
        assertThat(edge.length()).as("the hem is as long").isCloseTo(widthAt(PLAIN, Level.Name.HEM), within(0.1));
    }

    /** Whatever is moved, alone or all together, on many bodies: a pattern that can be sewn, or a finding that names it. */
    @Tag("slow")
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void extremesAreDrawnSoundOrTold(boolean all) {
        int drawn = 0;
        int told = 0;
        for (int seed = 1; seed <= 12; seed++) {
            Body body = SampleBody.random(seed);
            for (Shift shift : Shift.values()) {
                for (boolean most : new boolean[] {false, true}) {
                    Shifts shifts = all ? together(seed, most) : Shifts.of(shift, most ? shift.most() : shift.least());
                    String who = "seed " + seed + " " + shifts;
                    Findings findings = new Findings(who);
                    Optional<Pattern> pattern =
                            Draft.of(body, SampleFabric.heavyKnit(), Optional.empty(), ANKLE.with(shifts), findings);
                    assertThat(pattern.isPresent()).isEqualTo(findings.all().isEmpty());
                    pattern.ifPresent(p -> sound(who, p));
                    drawn += pattern.isPresent() ? 1 : 0;
                    told += findings.all().stream().map(Finding::key).anyMatch(k -> k.startsWith("style.")) ? 1 : 0;
                    assertThat(findings.all()).as(who).allMatch(f -> f.key().startsWith("style."));
                }
            }
        }
        System.out.printf("moved to the bounds, %s: %d drawn, %d told%n", all ? "together" : "alone", drawn, told);
        assertThat(drawn).isGreaterThan(told);
    }

    private static Shifts together(int seed, boolean most) {
        Map<Shift, Double> by = new EnumMap<>(Shift.class);
        for (Shift shift : Shift.values()) {
            boolean up = most ^ ((seed >> shift.ordinal() % 5) & 1) == 0;
            by.put(shift, (up ? shift.most() : shift.least()) / 2);
        }
        return new Shifts(by);
    }

    private static void sound(String who, Pattern pattern) {
        for (Piece piece : pattern.pieces()) {
            assertThat(DraftCheck.crosses(piece.sewLine()))
                    .as(who + " sew line")
                    .isFalse();
            assertThat(DraftCheck.crosses(piece.cutLine()))
                    .as(who + " cut line")
                    .isFalse();
        }
        for (Seam seam : pattern.seams()) {
            if (seam.sides().size() == 2 && seam.role() == Seam.Role.INSEAM) {
                assertThat(seam.sides().get(0).length())
                        .as(who + " inseams")
                        .isCloseTo(seam.sides().get(1).length(), within(0.1));
            }
        }
    }

    @Test
    void whatMovedItIsToldWithItsReason() {
        Pattern moved = draft(Shifts.of(Shift.BACK_KNEE, 6));
        assertThat(moved.moved()).hasSize(1);
        assertThat(moved.reasons().stream()
                        .filter(r -> r.dimension().word().endsWith("knee width"))
                        .flatMap(r -> r.inputs().stream())
                        .filter(i -> i.value() == 6))
                .hasSize(1);
    }

    @Test
    void whatHasNoPlaceOrGoesTooFarIsNamed() {
        assertThat(refused(Shifts.of(Shift.BACK_CROTCH_POINT, 40))).isEqualTo("style.shifts.back crotch point");
        Style knee = Style.usual(Style.Leg.SHORT);
        Findings findings = new Findings("short");
        Draft.of(BODY, SampleFabric.heavyKnit(), Optional.empty(), knee.with(Shifts.of(Shift.FRONT_CALF, 5)), findings);
        assertThat(findings.all()).extracting(Finding::key).containsExactly("style.shifts.front calf");
    }

    private static String refused(Shifts shifts) {
        Findings findings = new Findings("moved");
        assertThat(Draft.of(BODY, SampleFabric.heavyKnit(), Optional.empty(), ANKLE.with(shifts), findings))
                .isEmpty();
        return findings.all().get(0).key();
    }
}
