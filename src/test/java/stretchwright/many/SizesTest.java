package stretchwright.many;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.ground.Findings;
import stretchwright.intake.MakeFile;
import stretchwright.intake.SampleText;
import stretchwright.make.Make;
import stretchwright.make.Rooms;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;

final class SizesTest {
    private static final String TABLE = """
            name,figure,age,stature,waist girth,hip girth,unit
            Rowan,woman,31,162.7,74.2,96.1,cm
            """;

    /** A stitch by hand stretches less than an overlock, so the rings of the garment are drafted wider. */
    @Test
    void aSizeIsDraftedForTheMachinesOfTheMake() {
        MakeFile byHand = read("machines: [hand]");
        Pattern asMade = asMade(byHand);
        assertThat(asMade).as("the machines must matter here").isNotEqualTo(asMade(read("machines: [overlocker]")));
        List<String> row = List.of(csv(byHand, "sizes.csv").get(1).split(",", -1));
        for (Level level : asMade.levels()) {
            assertThat(row).as(level.name().word()).contains(String.format(Locale.ROOT, "%.2f", level.width()));
        }
    }

    /** An outline without what was taken off the body cannot be used again. */
    @Test
    void whatIsTakenOffTheBodyIsTold() {
        MakeFile make = read("machines: [overlocker]");
        List<String> table = csv(make, "sizes.csv");
        assertThat(table.get(0)).endsWith(",taken across,taken along,taken crotch,taken waistband,taken hem");
        Pattern.Reductions taken = asMade(make).reductions();
        assertThat(table.get(1))
                .endsWith(String.format(
                        Locale.ROOT,
                        ",%.4f,%.4f,%.4f,%.4f,%.4f",
                        taken.across(),
                        taken.along(),
                        taken.crotch(),
                        taken.waistband(),
                        taken.hem()));
    }

    private static MakeFile read(String machines) {
        String text = SampleText.with("machines: [overlocker, coverstitch]", machines)
                .replace("stretch across: 60 %", "stretch across: 45 %");
        return Make.read("a.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    private static Pattern asMade(MakeFile make) {
        Rooms rooms = new Rooms();
        Findings findings = new Findings("");
        Optional<Body> body = rooms.body(make.measured(), findings);
        Optional<Pattern> pattern = body.flatMap(b -> rooms.draft(b, make, findings));
        assertThat(findings.all()).isEmpty();
        return pattern.orElseThrow();
    }

    private static List<String> csv(MakeFile make, String name) {
        Sizes sizes = Sizes.of(make, "team.csv", TABLE.getBytes(StandardCharsets.UTF_8), Optional.empty());
        assertThat(sizes.findings()).isEmpty();
        return sizes.documents().stream()
                .filter(d -> d.name().equals(name))
                .map(d -> new String(d.bytes(), StandardCharsets.UTF_8))
                .findFirst()
                .orElseThrow()
                .lines()
                .toList();
    }
}
