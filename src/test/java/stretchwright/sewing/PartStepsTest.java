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
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Parts.Pocket;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Style;

/** The plans of drafted pairs in parts: every name in them exists, and what must come first does. */
class PartStepsTest {
    private static final Parts SEAM = Parts.PLAIN.with(Parts.SideSeam.SHAPED);
    private static final Parts.Gusset GUSSET = new Parts.Gusset(150, 60);

    private static Map<String, Pattern> patterns() {
        List<Pocket> all = List.of(
                new Pocket(Pocket.Kind.PHONE, 80, 140, 0),
                new Pocket(Pocket.Kind.HIP_PAD, 80, 60, 5),
                new Pocket(Pocket.Kind.KNEE_PAD, 60, 90, 5),
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
                Set<String> used = new HashSet<>();
                for (SewingPlan.Operation o : plan.operations()) {
                    for (String join : o.joins()) {
                        String[] parts = join.split(": ", 2);
                        assertThat(pattern.piece(parts[0]).edge(parts[1]).length())
                                .isPositive();
                        used.add(parts[0]);
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
        for (String text : List.of(o.instruction(), o.check())) {
            assertThat(text)
                    .as(name)
                    .matches("[A-Z][^\\n]*\\.")
                    .doesNotContain("  ")
                    .doesNotContain("..");
        }
        boolean gusset = pattern.pieces().stream().anyMatch(p -> p.name().equals("gusset"));
        assertThat((o.instruction() + o.check()).contains("gusset") && !gusset).isFalse();
        Matcher quoted = java.util.regex.Pattern.compile("\"([^\"]+)\"").matcher(o.instruction());
        while (quoted.find()) {
            assertThat(pattern.pieces().stream()
                            .flatMap(p -> p.marks().stream())
                            .map(Mark::name))
                    .contains(quoted.group(1));
        }
    }

    @Test
    void pocketsComeFirstPanelsNextTheGussetBetweenRisesAndInseams() {
        SewingPlan plan = Planning.plan(
                java.util.Objects.requireNonNull(patterns().get("all on a panel")),
                SampleFabric.heavyKnit(),
                Set.of(Machine.OVERLOCKER, Machine.COVERSTITCH));
        for (String pocket : List.of(PartSteps.PHONE, PartSteps.HIP, PartSteps.KNEE)) {
            assertThat(step(plan, PartSteps.PANELS).after())
                    .contains(step(plan, pocket).step());
        }
        assertThat(step(plan, LegSteps.FRONT).after())
                .contains(step(plan, PartSteps.PANELS).step());
        assertThat(step(plan, PartSteps.GUSSET).after())
                .contains(
                        step(plan, LegSteps.FRONT).step(),
                        step(plan, LegSteps.BACK).step());
        assertThat(step(plan, LegSteps.INSEAMS).after())
                .contains(step(plan, PartSteps.GUSSET).step());
        assertThat(step(plan, "join the waistband").after())
                .contains(step(plan, PartSteps.TAILBONE).step());
        assertThat(plan.operations()).noneMatch(o -> o.name().equals(LegSteps.BAR));
        assertThat(step(plan, LegSteps.INSEAMS).check()).contains("between the notches below knee and above knee");
        assertThat(step(plan, PartSteps.GUSSET).length()).isGreaterThan(4 * 75);
    }

    private static SewingPlan.Operation step(SewingPlan plan, String name) {
        return plan.operations().stream()
                .filter(o -> o.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no step " + name));
    }
}
