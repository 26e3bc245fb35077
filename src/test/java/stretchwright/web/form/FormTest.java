package stretchwright.web.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.ground.BadInput;
import stretchwright.ground.Unit;
import stretchwright.intake.Key;
import stretchwright.intake.Kind.Input;
import stretchwright.intake.MakeFile;
import stretchwright.intake.Table;
import stretchwright.make.Make;

/** What is typed becomes the make file that it says. */
class FormTest {
    private static final String BASE = """
            name=Sample
            unit=cm
            wearer.figure=woman
            wearer.measurements.stature=165
            fabric.usable width=147
            fabric.stretch across=60
            fabric.stretch along=45
            """;

    /** What is said of one value alone, and not of several that do not go together. */
    private static final String OF_ONE_VALUE =
            "(amount|length|lengths|share|word|words|single|list|value|section|sections|names"
                    + "|loads|corners|unit|key|name|whole)\\..*|.*\\.is-not";

    /** One line for each field. */
    private static Form form(String lines) {
        Map<String, List<String>> typed = new LinkedHashMap<>();
        lines.lines().forEach(l -> typed.put(l.split("=", 2)[0], List.of(l.split("=", 2)[1])));
        return Form.sent(typed);
    }

    private static MakeFile read(String lines) {
        return Make.read("form", form(lines).makeText().getBytes(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @ValueSource(strings = {"100 mm; 160 mm; 102.5 mm", "[100 mm, 160 mm, 102.5 mm]", " 100 mm ;160 mm; 102.5 mm; "})
    void aFoldTestIsAListOfLengths(String typed) {
        assertThat(new Form(Map.of("fabric.fold across", List.of(typed))).makeText())
                .contains("  fold across: [\"100 mm\", \"160 mm\", \"102.5 mm\"]");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  "})
    void anEmptyFoldTestIsLeftOut(String typed) {
        assertThat(new Form(Map.of("fabric.fold across", List.of(typed))).makeText())
                .doesNotContain("fold");
    }

    /** As somebody fills it in: who and what it is, the wearer, her cloth and boot; what is known after wearing last, folded away. */
    @Test
    void theFormAsksInTheOrderOfTheJob() {
        List<Group> groups = Groups.of(Table.keys(), new Form(Map.of()));
        assertThat(groups)
                .extracting(g -> g.key().isEmpty() ? g.fields().get(0).key() : g.key())
                .containsExactly(
                        "name",
                        "wearer",
                        "fabric",
                        "boot",
                        "style",
                        "sewing",
                        "print",
                        "first pair",
                        "learnt",
                        "after wearing",
                        "machines");
        assertThat(groups.subList(7, 10)).allMatch(Group::closed);
    }

    @Test
    void anEmptyFormSaysNothing() {
        assertThat(Form.empty().makeText()).isEqualTo("stretchwright: 1\n");
    }

    /** Every key of the table is reached from the page; those of lists in the first place. */
    @Test
    void everyKeyHasAField() {
        Set<String> wanted = new TreeSet<>();
        Table.keys().all().forEach(k -> wanted(wanted, "", k));
        wanted.remove("stretchwright");
        Set<String> there = Groups.of(Table.keys(), Form.empty()).stream()
                .flatMap(Group::all)
                .map(Field::key)
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(there).isEqualTo(wanted);
        assertThat(wanted).hasSizeGreaterThan(190);
    }

    private static void wanted(Set<String> wanted, String at, Key<?> key) {
        if (key.input() == Input.SECTIONS) {
            key.parts().all().forEach(k -> wanted(wanted, at + key.path() + ".1.", k));
        } else if (key.input() != Input.SECTION) {
            wanted.add(at + key.path());
        }
    }

    /** Two fields of one name would be sent twice. */
    @Test
    void noTwoFieldsHaveOneName() {
        assertThat(Groups.of(Table.keys(), Form.empty()).stream()
                        .flatMap(Group::all)
                        .map(Field::key))
                .doesNotHaveDuplicates();
    }

    /** What a field shows as an example, typed into it, is read without a finding at its key. */
    @Test
    void whatIsTypedAsTheExampleSaysIsRead() {
        for (Field field : Groups.of(Table.keys(), Form.empty()).stream()
                .flatMap(Group::all)
                .toList()) {
            String example = field.row().example(Unit.CM);
            List<String> values = field.input() == Input.MANY
                    ? List.of(example.replaceAll("[\\[\\]]", "").split(", "))
                    : List.of(example.replace("\"", ""));
            Map<String, List<String>> typed = new LinkedHashMap<>(Map.of("unit", List.of("cm")));
            typed.put(field.key(), values);
            String text = new Form(typed).makeText();
            assertThat(findings(text)).as(text).noneMatch(key -> key.equals(field.key()));
        }
    }

    private static List<String> findings(String text) {
        try {
            Make.read("form", text.getBytes(StandardCharsets.UTF_8));
            return List.of();
        } catch (BadInput e) {
            return e.findings().stream()
                    .filter(f -> f.wrong().key().matches(OF_ONE_VALUE))
                    .map(f -> f.key())
                    .toList();
        }
    }

    @Test
    void placesOfAListThatAreLeftEmptyAreClosedUp() {
        String pockets = """
                style.pockets.1.kind=
                style.pockets.3.kind=phone
                style.pockets.3.width=9
                style.pockets.3.height=16
                style.pockets.5.kind=knee pad
                style.pockets.5.width=12
                style.pockets.5.height=16
                style.pockets.5.thickness=1
                """;
        assertThat(read(BASE + pockets).style().parts().pockets()).hasSize(2);
        assertThat(form(BASE + pockets).value("style.pockets.2.kind")).isEqualTo("knee pad");
        assertThat(form(BASE + pockets).places("style.pockets")).isEqualTo(3);
    }

    @Test
    void listsInListsHavePlacesOfTheirOwn() {
        String contrasts = """
                fabric.contrasts.2.pieces=waistband
                fabric.contrasts.2.flaws.4.from left=30
                fabric.contrasts.2.flaws.4.from end=52
                fabric.contrasts.2.flaws.4.wide=1
                fabric.contrasts.2.flaws.4.long=2
                """;
        assertThat(read(BASE + contrasts).contrasts())
                .singleElement()
                .satisfies(c -> assertThat(c.fabric().roll().shape().flaws()).hasSize(1));
    }

    @Test
    void unitsThatStandBesideAFieldGoBehindItsNumber() {
        MakeFile make = read(
                BASE
                        + "style.hold=10\nfabric.weight=260\nfabric.price=14.50\nstyle.lay.grain tolerance=1\nprint.preview=50\n");
        assertThat(make.style().hold().words()).isEqualTo("10.0 % off every girth");
        assertThat(make.fabric().quality().weight()).hasValue(260);
        assertThat(make.style().lay().tilt()).isEqualTo(1);
        assertThat(make.print().preview()).hasValue(50);
    }

    @Test
    void oneThingSaidInTwoPlacesIsAFinding() {
        Form twice = form(BASE + "style.hold=firm\nstyle.hold.calf=8 mmHg\n");
        assertThat(Strangers.in(twice, Table.keys()))
                .singleElement()
                .satisfies(f -> assertThat(f.line()).contains("style.hold", "Keep one"));
        assertThat(Strangers.in(form(BASE + "style.hold.calf=8 mmHg\n"), Table.keys()))
                .isEmpty();
    }
}
