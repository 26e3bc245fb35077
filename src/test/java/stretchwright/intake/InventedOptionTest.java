package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.ground.Voice;
import stretchwright.many.CompareInputs;
import stretchwright.many.CompareRow;
import stretchwright.report.ReportEcho;
import stretchwright.web.form.FormFields;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** An option is one row of the table: an invented one is found wherever options are. */
class InventedOptionTest {
    private static final WearingKey LET_OUT = WearingKey.by("fringe", -10, 20);

    /** The row, and nothing else. */
    private static final Key<Double> FRINGE = Row.worn(
                    Row.length("style.fringe", 5, 300, "why.hem-drop", 10, 90, "{40}")
                            .also("tassel")
                            .worded("style.hem-drop"),
                    LET_OUT)
            .onRoll(Roll.same(Roll.About.LAY));

    private static final Keys TABLE = Table.with(FRINGE);

    private static String with(String style) {
        return SampleText.with("leg: over boot", "leg: over boot" + style);
    }

    private static Optional<MakeFile> read(String file, String text, Findings findings) {
        return YamlTree.read(text, findings).flatMap(tree -> MakeReader.read(file, tree, TABLE, findings));
    }

    private static MakeFile read(String text) {
        Findings findings = new Findings("a.yaml");
        Optional<MakeFile> make = read("a.yaml", text, findings);
        assertThat(findings.all()).isEmpty();
        return make.orElseThrow();
    }

    private static List<Finding> findings(String text) {
        Findings findings = new Findings("a.yaml");
        read("a.yaml", text, findings);
        return findings.all();
    }

    @Test
    void withoutTheRowItIsNotKnown() {
        assertThat(SampleReading.only(with("\n  fringe: 4")).line()).contains("style.fringe", "not a key");
    }

    @Test
    void theReaderReadsItWithRangeUnitAndSynonym() {
        assertThat(FRINGE.lens().get().apply(read(with("\n  fringe: 4")))).contains(40.0);
        assertThat(FRINGE.lens().get().apply(read(with("\n  tassel: 2 in")))).contains(50.8);
        assertThat(FRINGE.lens().get().apply(read(with("")))).isEmpty();
        assertThat(findings(with("\n  fringe: 40")))
                .singleElement()
                .satisfies(f -> assertThat(f.line()).contains("style.fringe", "Allowed is 0.5 cm to 30 cm", "40 mm"));
        assertThat(findings(with("\n  fringe: 20")))
                .singleElement()
                .satisfies(f -> assertThat(f.line()).contains("taken as 20 cm", "Write 20 mm"));
        assertThat(findings(with("\n  frinje: 4")))
                .singleElement()
                .satisfies(f -> assertThat(f.remedy()).contains("\"fringe\""));
    }

    @Test
    void theSchemaHasIt() {
        ObjectNode style = (ObjectNode) Schema.of(TABLE).at("/properties/style/properties");
        assertThat(style.at("/fringe/$ref").asString()).isEqualTo("#/$defs/length");
        assertThat(style.has("tassel")).isTrue();
    }

    @Test
    void theTablesOfTheFormatsHaveIt() throws IOException {
        String formats = new KeysDocument(TABLE).in(Files.readString(Path.of("docs/formats.md")));
        assertThat(formats).contains("| `style.fringe` |", "Also understood: tassel | 5 to 300 mm |");
    }

    @Test
    void thePageAsksForIt() {
        assertThat(FormFields.labels(TABLE)).containsKey("style.fringe");
        assertThat(FormFields.labels(Table.keys())).doesNotContainKey("style.fringe");
        assertThat(FormFields.makeText(TABLE, "style.fringe", "4 cm")).contains("style:\n  fringe: \"4 cm\"\n");
    }

    @Test
    void theReportRepeatsIt() {
        ObjectNode style = JsonNodeFactory.instance.objectNode();
        ReportEcho.section(style, "style", read(with("\n  fringe: 4")), TABLE);
        assertThat(style.get("fringe").asInt()).isEqualTo(40);
        assertThat(style.get("leg").asString()).isEqualTo("over boot");
    }

    @Test
    void twoMakesAreComparedInIt() {
        List<CompareRow> rows = CompareInputs.of(read(with("\n  fringe: 4")), read(with("\n  fringe: 5")), TABLE);
        assertThat(rows).singleElement().satisfies(r -> {
            assertThat(Voice.plain().say(r.what())).isEqualTo("style fringe");
            assertThat(r.a()).hasValue(40);
            assertThat(r.b()).hasValue(50);
        });
    }

    @Test
    void itMayBeChangedAfterWearingWithinItsBounds() {
        String changed =
                with("\n  fringe: 4") + "after wearing:\n  - {date: 2026-01-31, symptom: hem wavy, change: {fringe: ";
        assertThat(FRINGE.lens().get().apply(read(changed + "15 mm}}\n"))).contains(55.0);
        assertThat(findings(changed + "25 mm}}\n"))
                .singleElement()
                .satisfies(f -> assertThat(f.key()).isEqualTo("after wearing.1.change.fringe"));
    }

    @Test
    void makesOnOneRollMustAgreeInIt() {
        MakeFile plain =
                read("a.yaml", with("\n  fringe: 4"), new Findings("a.yaml")).orElseThrow();
        MakeFile other =
                read("b.yaml", with("\n  fringe: 5"), new Findings("b.yaml")).orElseThrow();
        assertThat(OneRoll.findings(List.of(plain, other), TABLE))
                .singleElement()
                .satisfies(f -> assertThat(f.line()).contains("b.yaml: style.fringe", "is 5 cm, but 4 cm in a.yaml"));
        assertThat(OneRoll.findings(List.of(plain, plain), TABLE)).isEmpty();
    }

    @Test
    void aPageMaySetIt() {
        MakeFile make = read(with("\n  fringe: 4"));
        MakeFile set = FRINGE.lens().set().orElseThrow().apply(make, 60.0);
        assertThat(FRINGE.lens().get().apply(set)).contains(60.0);
        assertThat(set.style()).isEqualTo(make.style());
    }
}
