package stretchwright.sewing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.body.SampleBody;
import stretchwright.boot.SampleBoot;
import stretchwright.draft.Draft;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Voice;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Parts.Pocket;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Style;

/** The plans of drafted pairs in parts: every name in them exists, and what must come first does. */
class PartStepsTest {
    private static final Parts SEAM = Parts.PLAIN.with(Parts.SideSeam.SHAPED);
    private static final Parts.Gusset GUSSET = new Parts.Gusset(150, 60);

    private static Map<String, Pattern> patterns() {
        List<Pocket> all = List.of(
                new Pocket(Pocket.Kind.PHONE, 80, 140, 0),
                new Pocket(Pocket.Kind.HIP_PAD, 80, 60, 5),
                new Pocket(Pocket.Kind.KNEE_PAD, 56, 90, 5),
                new Pocket(Pocket.Kind.TAILBONE_PAD, 100, 80, 13));
        List<Pocket> noHip =
                all.stream().filter(p -> p.kind() != Pocket.Kind.HIP_PAD).toList();
        Map<String, Parts> parts = new LinkedHashMap<>();
        parts.put("side seam", SEAM);
        parts.put("pockets", Parts.PLAIN.with(all));
        parts.put("gusset", Parts.PLAIN.with(GUSSET));
        parts.put("panel and gusset", Parts.PLAIN.withPanel(120).with(GUSSET).with(all));
        parts.put("all", SEAM.with(GUSSET).withKneeShaping().with(noHip));
        parts.put(
                "all on a panel",
                SEAM.with(GUSSET).withPanel(110).withKneeShaping().with(all));
        Map<String, Pattern> out = new LinkedHashMap<>();
        parts.forEach((name, p) -> {
            out.put(
                    name,
                    draft(Style.usual(Style.Leg.OVER_BOOT)
                            .with(LowerEnd.cuff(32))
                            .with(p)));
            out.put(name + ", hem", draft(Style.usual(Style.Leg.ANKLE).with(p)));
        });
        return out;
    }

    private static Pattern draft(Style style) {
        Findings findings = new Findings("test");
        Optional<Pattern> pattern = Draft.of(
                SampleBody.smallAdult(), SampleFabric.heavyKnit(), Optional.of(SampleBoot.figure()), style, findings);
        assertThat(findings.all()).isEmpty();
        return pattern.orElseThrow();
    }

    @Tag("slow")
    @Test
    void everyNameExistsAndEveryPieceIsUsed() {
        patterns().forEach((name, pattern) -> {
            for (Set<Machine> machines : SampleSewing.machineSets()) {
                SewingPlan plan = Planning.plan(pattern, SampleFabric.heavyKnit(), machines);
                Set<PieceName> used = new HashSet<>();
                for (SewingPlan.Operation o : plan.operations()) {
                    for (Joined join : o.joins()) {
                        assertThat(pattern.piece(join.piece()).edge(join.edge()).length())
                                .isPositive();
                        used.add(join.piece());
                    }
                    texts(name, pattern, o);
                }
                assertThat(used)
                        .as(name)
                        .containsAll(pattern.pieces().stream().map(Piece::name).toList());
            }
        });
    }

    private static void texts(String name, Pattern pattern, SewingPlan.Operation o) {
        String instruction = Voice.plain().say(o.instruction());
        String check = Voice.plain().say(o.check());
        for (String text : List.of(instruction, check)) {
            assertThat(text)
                    .as(name)
                    .matches("[A-Z][^\\n]*\\.")
                    .doesNotContain("  ")
                    .doesNotContain("..");
        }
        boolean gusset = pattern.pieces().stream().anyMatch(p -> p.name().is(PieceKind.GUSSET));
        assertThat((instruction + check).contains("gusset") && !gusset).isFalse();
        Matcher quoted = java.util.regex.Pattern.compile("\"([^\"]+)\"").matcher(instruction);
        while (quoted.find()) {
            assertThat(pattern.pieces().stream()
                            .flatMap(p -> p.marks().stream())
                            .map(m -> m.name().word()))
                    .contains(quoted.group(1));
        }
    }

    @Test
    void pocketsComeFirstPanelsNextTheGussetBetweenRisesAndInseams() {
        SewingPlan plan = Planning.plan(
                java.util.Objects.requireNonNull(patterns().get("all on a panel")),
                SampleFabric.heavyKnit(),
                Set.of(Machine.OVERLOCKER, Machine.COVERSTITCH));
        for (StepKind pocket : List.of(StepKind.PHONE_POCKET, StepKind.HIP_POCKET, StepKind.KNEE_POCKET)) {
            assertThat(step(plan, StepKind.PANELS).after())
                    .contains(step(plan, pocket).step());
        }
        assertThat(step(plan, StepKind.FRONT_RISE).after())
                .contains(step(plan, StepKind.PANELS).step());
        assertThat(step(plan, StepKind.GUSSET).after())
                .contains(
                        step(plan, StepKind.FRONT_RISE).step(),
                        step(plan, StepKind.BACK_RISE).step());
        assertThat(step(plan, StepKind.INSEAMS).after())
                .contains(step(plan, StepKind.GUSSET).step());
        assertThat(step(plan, StepKind.BAND_JOIN).after())
                .contains(step(plan, StepKind.TAILBONE_POCKET).step());
        assertThat(plan.operations()).noneMatch(o -> o.name().equals(StepKind.CROTCH_BAR));
        assertThat(Voice.plain().say(step(plan, StepKind.INSEAMS).check()))
                .contains("between the notches below knee and above knee");
        assertThat(step(plan, StepKind.GUSSET).length()).isGreaterThan(4 * 75);
    }

    private static SewingPlan.Operation step(SewingPlan plan, StepName name) {
        return plan.operations().stream()
                .filter(o -> o.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no step " + name));
    }
}
