package stretchwright.many;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Part;
import stretchwright.ground.Progress;
import stretchwright.intake.SampleReading;
import stretchwright.intake.SampleText;
import stretchwright.make.Made;
import stretchwright.make.SampleRooms;

/** What went in and differs; that all of it is told in its own unit. */
final class CompareTest {
    private static final String WRAPPED = SampleText.with("  recovery: 95 %", "  recovery: 95 %\n  wrap hip: 84")
            .replace("hem girth: 38.5", "hem girth: 39");

    @Tag("slow")
    @Test
    void aWrapTestIsTheLengthThatWasPinned() {
        CompareRow row = only(WRAPPED, WRAPPED.replace("wrap hip: 84", "wrap hip: 86"));
        assertThat(row.what()).isEqualTo(Part.text("fabric wrap hip"));
        assertThat(row.unit()).isEqualTo("mm");
        assertThat(row.a()).hasValue(840);
        assertThat(row.b()).hasValue(860);
    }

    @Tag("slow")
    @Test
    void widthAddedByTheMakerIsSeen() {
        String eased = SampleText.with("  hold: medium", "  hold: medium\n  ease: {knee: 1 cm}");
        CompareRow row = only(SampleText.WHOLE, eased);
        assertThat(row.what()).isEqualTo(Part.text("style ease knee"));
        assertThat(row.unit()).isEqualTo("mm");
        assertThat(row.a()).isEmpty();
        assertThat(row.b()).hasValue(10);
    }

    @Tag("slow")
    @Test
    void aWiderPocketOfTheSameKindIsSeen() {
        String pocket = SampleText.with(
                "  side seam: none", "  side seam: none\n  pockets: [{kind: phone, width: 9 cm, height: 16 cm}]");
        CompareRow row = only(pocket, pocket.replace("width: 9 cm", "width: 10 cm"));
        assertThat(row.what()).isEqualTo(Part.text("style pockets phone width"));
        assertThat(row.a()).hasValue(90);
        assertThat(row.b()).hasValue(100);
    }

    @Tag("slow")
    @Test
    void anotherFigureAndAgeAreSeen() {
        assertThat(inputs(SampleText.WHOLE, SampleText.with("figure: woman", "figure: man")))
                .anySatisfy(r -> {
                    assertThat(r.what()).isEqualTo(Part.text("figure"));
                    assertThat(r.textA()).isEqualTo(Part.text("woman"));
                    assertThat(r.textB()).isEqualTo(Part.text("man"));
                });
        assertThat(inputs(SampleText.WHOLE, SampleText.with("age: 31", "age: 32")))
                .anySatisfy(r -> {
                    assertThat(r.what()).isEqualTo(Part.text("age"));
                    assertThat(r.unit()).isEqualTo("years");
                });
    }

    private static CompareRow only(String a, String b) {
        List<CompareRow> rows = inputs(a, b);
        assertThat(rows).as(rows.toString()).hasSize(1);
        return rows.get(0);
    }

    private static List<CompareRow> inputs(String a, String b) {
        return CompareInputs.of(made(a), made(b));
    }

    private static Made made(String text) {
        return SampleRooms.run(SampleReading.read(text), Progress.silent());
    }

    /** Told in the maker's own unit alone. */
    @Tag("slow")
    @Test
    void lengthsAreToldInOneUnit() {
        assertThat(row("hip girth", SampleText.WHOLE, SampleText.with("hip girth: 96.1", "hip girth: 99")))
                .matches("hip girth +96\\.1 cm +99\\.0 cm +\\+2\\.9 cm");
        String own = inches(SampleText.WHOLE).replace("hip girth: 96.1 cm", "hip girth: 38");
        assertThat(row("hip girth", own, own.replace("hip girth: 38", "hip girth: 39 1/4")))
                .matches("hip girth +38 in +39 1/4 in +\\+1 1/4 in");
    }

    /** Each value as its own file has it, the change as the first has. */
    @Tag("slow")
    @Test
    void makesOfTwoUnitsAreToldEachInItsOwn() {
        String own = inches(SampleText.WHOLE).replace("hip girth: 96.1 cm", "hip girth: 39");
        assertThat(row("hip girth", SampleText.WHOLE, own)).matches("hip girth +96\\.1 cm +39 in +\\+3\\.0 cm");
        assertThat(row("hip girth", own, SampleText.WHOLE)).matches("hip girth +39 in +96\\.1 cm +-1 3/16 in");
        assertThat(table(SampleText.WHOLE, inches(SampleText.WHOLE)))
                .contains("What went in                                   the same");
    }

    @Tag("slow")
    @Test
    void countsHaveNoDecimals() {
        assertThat(row("age", SampleText.WHOLE, SampleText.with("age: 31", "age: 40")))
                .matches("age +31 years +40 years +\\+9 years");
        assertThat(row("changes of machine", SampleText.WHOLE, SampleText.with("[overlocker, coverstitch]", "[hand]")))
                .matches("changes of machine +\\d+ +\\d+ +[+-]\\d+");
        assertThat(row(
                        "cost of the fabric",
                        SampleText.WHOLE,
                        SampleText.with("price: 14.50 per m", "price: 15.10 per m")))
                .matches("cost of the fabric +\\d+\\.\\d\\d +\\d+\\.\\d\\d +\\+\\d+\\.\\d\\d");
    }

    /** The same lengths, written in inches with their own unit. */
    private static String inches(String text) {
        return text.replace("unit: cm", "unit: in")
                .replaceAll(
                        "(?m)(girth|stature|usable width|ankle to hem|seam allowance|height): ([0-9.]+)(?=[,}\\n])",
                        "$1: $2 cm");
    }

    private static String row(String what, String a, String b) {
        return table(a, b).stream()
                .map(String::strip)
                .filter(l -> l.startsWith(what + " "))
                .findFirst()
                .orElseThrow(() -> new AssertionError(String.join("\n", table(a, b))));
    }

    private static List<String> table(String a, String b) {
        return Compare.of(made(a), made(b)).table();
    }
}
