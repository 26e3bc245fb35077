package stretchwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static stretchwright.ground.InWords.words;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.SampleBody;
import stretchwright.boot.Boot;
import stretchwright.boot.SampleBoot;
import stretchwright.draft.Draft;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

/** A garment that hangs loose is told so, and more the looser it is. */
class SlackJudgeTest {
    private static final Body BODY = SampleBody.smallAdult();
    private static final List<Level.Name> LEG =
            List.of(Level.Name.CROTCH, Level.Name.MID_THIGH, Level.Name.KNEE, Level.Name.CALF, Level.Name.ANKLE);

    private static Style style(Style.Leg leg, double off, double ease) {
        Map<Level.Name, Double> all = new EnumMap<>(Level.Name.class);
        LEG.forEach(l -> all.put(l, ease));
        return Style.usual(leg).with(new Hold.Fixed(off)).withEase(all);
    }

    private static FitReport check(Style style, Optional<Boot> boot) {
        Findings findings = new Findings("slack");
        Pattern pattern =
                Draft.of(BODY, SampleFabric.heavyKnit(), boot, style, findings).orElseThrow();
        return FitCheck.of(
                pattern, BODY, SampleFabric.heavyKnit(), boot, style, Set.of(Machine.OVERLOCKER, Machine.COVERSTITCH));
    }

    private static String said(FitReport report, String about) {
        StringBuilder all = new StringBuilder();
        report.verdicts().stream()
                .filter(v -> words(v.about()).equals(about))
                .forEach(v -> all.append(v.severity()).append(' ').append(words(v.message())));
        return all.toString();
    }

    @Test
    void aLegWithoutHoldAndWithEaseHoldsNowhere() {
        assertThat(said(check(style(Style.Leg.ANKLE, 0, 60), Optional.empty()), "looseness"))
                .startsWith("STOP It would hold nowhere");
    }

    @Test
    void anOrdinaryLegIsNowhereLoose() {
        assertThat(said(check(Style.usual(Style.Leg.ANKLE), Optional.empty()), "looseness"))
                .isEmpty();
        Style overBoot = Style.usual(Style.Leg.OVER_BOOT).with(LowerEnd.cuff(32));
        assertThat(said(check(overBoot, Optional.of(SampleBoot.figure())), "looseness"))
                .isEmpty();
    }

    /** Looser by a little at a time: first nothing, then a note, a caution, a stop; never back. */
    @Test
    void looserIsNeverToldMilder() {
        int last = 0;
        List<String> order = List.of("", "NOTE", "CAUTION", "STOP");
        int steps = 0;
        for (double ease = 0; ease <= 60; ease += 2.5) {
            String told = said(check(style(Style.Leg.ANKLE, 0.06, ease), Optional.empty()), "looseness");
            int now = order.indexOf(told.replaceFirst(" .*", ""));
            assertThat(now).as("ease " + ease).isGreaterThanOrEqualTo(last);
            steps += now > last ? 1 : 0;
            last = now;
        }
        assertThat(last).isEqualTo(3);
        assertThat(steps).as("not from nothing to all at once").isGreaterThanOrEqualTo(2);
    }

    /** On a boot that is much narrower where the hem lies than at the heel that must pass it, in cloth that hardly stretches. */
    @Test
    void aHemThatHangsRoundTheBootIsAStop() {
        Boot slim = new Boot("figure skate", 290, 400, 300, 140, 80, true, Boot.Dressing.LEG_FIRST);
        Style style = Style.usual(Style.Leg.OVER_BOOT);
        Findings findings = new Findings("slack");
        Fabric stiff = SampleFabric.with(1470, 0.2, 0.2, true);
        Pattern pattern =
                Draft.of(BODY, stiff, Optional.of(slim), style, findings).orElseThrow();
        FitReport report = FitCheck.of(
                pattern, BODY, stiff, Optional.of(slim), style, Set.of(Machine.OVERLOCKER, Machine.COVERSTITCH));
        assertThat(said(report, "hem on the boot")).startsWith("STOP The hem is");
    }

    /** Legs that are stretched enough at every level are not asked between them: none of them would be loose there. */
    @Tag("slow")
    @Test
    void betweenLevelsThatAreStretchedNothingIsLoose() {
        int asked = 0;
        for (int seed = 1; seed <= 60; seed++) {
            Body body = SampleBody.random(seed);
            for (double off : new double[] {0.10, 0.12, 0.15}) {
                Style style = Style.usual(Style.Leg.ANKLE).with(new Hold.Fixed(off));
                Fabric fabric = SampleFabric.with(1470, 1.0, 0.6, true);
                Optional<Pattern> pattern = Draft.of(body, fabric, Optional.empty(), style, new Findings("seed"));
                if (pattern.isEmpty()) {
                    continue;
                }
                Worn worn = new Worn(pattern.get(), body, fabric, Optional.empty(), style, Set.of(Machine.OVERLOCKER));
                List<FitReport.LevelFit> levels = Levels.of(pattern.get(), body, fabric, Optional.empty(), style);
                if (levels.stream().filter(SlackJudge::isOfLeg).allMatch(l -> l.across() > 0.10)) {
                    asked++;
                    assertThat(new SlackJudge(worn, levels).loose().length())
                            .as("seed " + seed + ", " + off)
                            .isLessThan(1);
                }
            }
        }
        assertThat(asked).isGreaterThan(30);
    }
}
