package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.boot.Boot;
import stretchwright.boot.SampleBoot;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Voice;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Style;

/** The reasons tell the truth: their rules, worked out by hand from their inputs, give what is drawn. */
class ReasonsTest {
    private static Pattern overBoot(Body body) {
        return DraftTest.draft(
                body,
                SampleFabric.heavyKnit(),
                Optional.of(SampleBoot.scaled(body.mm(Measure.HEEL_GIRTH) / 305)),
                DraftTest.OVER_BOOT);
    }

    private static Reason reason(Pattern pattern, String dimension) {
        return pattern.reasons().stream()
                .filter(r -> r.dimension().word().equals(dimension))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no reason for " + dimension));
    }

    private static double input(Reason reason, String name) {
        return reason.inputs().stream()
                .filter(i -> Voice.plain().say(i.name()).equals(name))
                .mapToDouble(Reason.Input::value)
                .findFirst()
                .orElseThrow(() -> new AssertionError(reason.dimension() + " has no input " + name));
    }

    @Test
    void rulesWorkedOutByHandGiveWhatIsDrawn() {
        for (int seed = 1; seed <= 60; seed++) {
            Pattern pattern = overBoot(SampleBody.random(seed));
            Piece leg = pattern.piece(PieceName.of(PieceKind.LEG));
            Reason seam = reason(pattern, "leg: crotch seam length");
            double drawn = leg.edge(EdgeName.FRONT_CROTCH).length()
                    + leg.edge(EdgeName.BACK_CROTCH).length();
            assertThat(drawn)
                    .as("seed " + seed)
                    .isCloseTo(
                            input(seam, "total crotch length")
                                    * (1 - input(seam, "reduction along the crotch seam") / 100),
                            within(0.5));
            Reason hip = reason(pattern, "leg: hip width, both legs");
            assertThat(pattern.level(Level.Name.HIP).orElseThrow().width())
                    .isCloseTo(input(hip, "hip girth") * (1 - input(hip, "reduction across") / 100), within(0.5));
            Reason end = reason(pattern, "leg: lower edge height");
            Reason hem = reason(pattern, "leg: hem height");
            double floor = (input(hem, "ankle bone height") - input(hem, "ankle to hem"))
                    * (1 - input(hem, "reduction along") / 100);
            assertThat(leg.edge(EdgeName.HEM).line().start().y())
                    .isCloseTo(floor + input(end, "finished cuff"), within(0.05));
        }
    }

    private static Map<String, Pattern> styles() {
        Map<String, Pattern> all = new LinkedHashMap<>(TopStyles.drafted());
        for (LowerEnd.Hem hem : LowerEnd.Hem.values()) {
            all.put(hem.word(), over(HemStyles.style(hem)));
        }
        all.put("cuff", over(DraftTest.OVER_BOOT));
        all.put(
                "parts",
                over(DraftTest.OVER_BOOT.with(new Parts(
                        Parts.SideSeam.SHAPED,
                        OptionalDouble.of(60),
                        Optional.of(new Parts.Gusset(140, 60)),
                        true,
                        List.of(new Parts.Pocket(Parts.Pocket.Kind.PHONE, 40, 90, 0))))));
        all.put("stirrup", over(Style.usual(Style.Leg.STIRRUP)));
        return all;
    }

    private static Pattern over(Style style) {
        return DraftTest.draft(
                SampleBody.smallAdult(),
                SampleFabric.heavyKnit(),
                Optional.of(SampleBoot.withSole(1, Boot.Dressing.LEG_FIRST)),
                style);
    }

    /** A chain that names another dimension can be followed, and ends at tape, cloth, boot, style or a rule of its own. */
    @Test
    void everyChainCanBeFollowedToItsEndInEveryStyle() {
        SoftAssertions softly = new SoftAssertions();
        styles().forEach((style, pattern) -> follow(softly, style, pattern));
        softly.assertAll();
    }

    static void canBeFollowed(Pattern pattern) {
        SoftAssertions softly = new SoftAssertions();
        follow(softly, "", pattern);
        softly.assertAll();
    }

    private static void follow(SoftAssertions softly, String style, Pattern pattern) {
        Set<Dimension> names = pattern.reasons().stream().map(Reason::dimension).collect(Collectors.toSet());
        softly.assertThat(names).as(style).hasSameSizeAs(pattern.reasons());
        for (Reason reason : pattern.reasons()) {
            softly.assertThat(Voice.plain().say(reason.source()))
                    .as(style + ", " + reason.dimension())
                    .isNotBlank();
            for (Reason.Input input : reason.inputs()) {
                softly.assertThat(input.from() instanceof Reason.Origin || names.contains(input.from()))
                        .as(style + ", " + reason.dimension() + ": " + input)
                        .isTrue();
            }
        }
    }

    /** Every edge of every piece: its length is told, or that of the whole edge of which it is a part. */
    @Test
    void everyPieceHasReasonsInEveryStyle() {
        SoftAssertions softly = new SoftAssertions();
        styles().forEach((style, pattern) -> {
            for (Piece piece : pattern.pieces()) {
                softly.assertThat(pattern.reasons().stream().map(Reason::dimension))
                        .as(style + ", " + piece.name())
                        .anyMatch(d -> d.of().equals(Optional.of(piece.name())));
            }
        });
        softly.assertAll();
    }
}
