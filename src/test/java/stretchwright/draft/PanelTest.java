package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.SampleBody;
import stretchwright.body.Stance;
import stretchwright.boot.SampleBoot;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/** A panel along the side shares the waist edge with a dart or a shaped seam: both go, or a finding names both. */
class PanelTest {
    private static final Fabric CLOTH = SampleFabric.with(1470, 0.6, 0.45, true);

    private static Style darts(double panel) {
        TopEnd top = TopEnd.band(45).with(TopEnd.BackShape.DARTS);
        return Style.usual(Style.Leg.SHORT).with(top).with(Parts.PLAIN.withPanel(panel));
    }

    private static Optional<Pattern> draft(Body body, Style style, Findings findings) {
        Optional<Pattern> pattern = Draft.of(body, CLOTH, Optional.of(SampleBoot.figure()), style, findings);
        assertThat(pattern.isPresent()).isEqualTo(findings.isEmpty());
        return pattern;
    }

    /** The small adult's dart begins 86 mm from the side line. */
    @Test
    void aPanelThatWouldCutTheDartIsAFindingThatNamesBoth() {
        for (double width : new double[] {180, 240}) {
            Findings findings = new Findings("test");
            assertThat(draft(SampleBody.smallAdult(), darts(width), findings)).isEmpty();
            assertThat(findings.all()).singleElement().matches(f -> f.key().equals("style.panel.width"));
            Finding found = findings.all().get(0);
            assertThat(found.problem()).contains("style.back: darts");
            assertThat(found.remedy()).contains("Choose a panel of ", "style.back: plain");
        }
        assertThat(draft(SampleBody.smallAdult(), darts(120), new Findings("test")))
                .isPresent();
    }

    /** The width that a remedy names. */
    private static double named(Finding finding) {
        return Double.parseDouble(
                finding.remedy().replaceFirst("Choose a panel of ", "").replaceFirst(" mm.*", ""));
    }

    private static void sound(String who, Body body, Style style, Pattern pattern) {
        assertThat(DraftCheck.broken(body, style, pattern)).as(who).isEmpty();
        for (Piece part : pattern.legs()) {
            for (Edge edge : part.edges()) {
                assertThat(edge.length())
                        .as(who + ": " + part.name() + ", " + edge.name())
                        .isGreaterThan(9.9);
            }
        }
    }

    /** Every width on every body, seeded: what is refused goes with the width that the finding names, or without the dart. */
    @Tag("slow")
    @Test
    void everyWidthGoesOrTheRemedyDoes() {
        int beside = 0;
        int drafted = 0;
        for (int seed = 1; seed <= 60; seed++) {
            Body body = SampleBody.random(seed);
            for (double width = 10; width <= 300; width += 14.5) {
                String who = "seed " + seed + ", " + width + " mm";
                Findings findings = new Findings(who);
                Optional<Pattern> pattern = draft(body, darts(width), findings);
                if (pattern.isPresent()) {
                    drafted++;
                    sound(who, body, darts(width), pattern.get());
                    continue;
                }
                for (Finding f : findings.all()) {
                    if (f.problem().contains("style.back: darts")) {
                        beside++;
                        Style narrower = darts(named(f));
                        sound(
                                who,
                                body,
                                narrower,
                                draft(body, narrower, new Findings(who)).orElseThrow());
                        Style plain = darts(width).with(TopEnd.band(45));
                        sound(
                                who,
                                body,
                                plain,
                                draft(body, plain, new Findings(who)).orElseThrow());
                    }
                }
            }
        }
        assertThat(beside).isGreaterThan(20);
        assertThat(drafted).isGreaterThan(300);
    }

    /** Who sits all day, the back raised and the front lowered: the waist edge is so steep that the dart leans far back. */
    @Tag("slow")
    @Test
    void aDartThatWouldRunIntoTheCentreBackSeamIsAFinding() {
        TopEnd steep = TopEnd.band(45).with(TopEnd.BackShape.DARTS).raised(-22, 50);
        int named = 0;
        for (int seed = 1; seed <= 200; seed++) {
            Body b = SampleBody.random(seed);
            Body sitting = new Body(b.figure(), b.age(), Stance.SITTING, b.values(), b.legs());
            Style style = Style.usual(Style.Leg.ANKLE).with(steep);
            Findings findings = new Findings("seed " + seed);
            Optional<Pattern> pattern = draft(sitting, style, findings);
            pattern.ifPresent(
                    p -> assertThat(DraftCheck.broken(sitting, style, p)).isEmpty());
            named += (int) findings.all().stream()
                    .filter(f -> f.key().equals("style.back"))
                    .filter(f -> f.problem().contains("front waist -22 mm, back waist +50 mm, a wearer who sits"))
                    .count();
        }
        assertThat(named).isPositive();
    }

    /** Both seams of a panel lean in: what is too narrow for that goes at the width that the finding names. */
    @Tag("slow")
    @Test
    void aPanelKeepsItsWidthBetweenShapedSeams() {
        int refused = 0;
        for (int seed = 1; seed <= 60; seed++) {
            Body body = SampleBody.random(seed);
            for (double width = 10; width <= 60; width += 6.5) {
                String who = "seed " + seed + ", " + width + " mm";
                Style style = shaped(width);
                Findings findings = new Findings(who);
                Optional<Pattern> pattern = draft(body, style, findings);
                pattern.ifPresent(p -> sound(who, body, style, p));
                for (Finding f : findings.all()) {
                    refused++;
                    assertThat(f.key()).isEqualTo("style.panel.width");
                    assertThat(f.problem()).contains("style.side seam: shaped");
                    Style wider = shaped(named(f));
                    sound(
                            who,
                            body,
                            wider,
                            draft(body, wider, new Findings(who)).orElseThrow());
                }
            }
        }
        assertThat(refused).isGreaterThan(20);
    }

    private static Style shaped(double panel) {
        return Style.usual(Style.Leg.SHORT)
                .with(Parts.PLAIN.with(Parts.SideSeam.SHAPED).withPanel(panel));
    }
}
