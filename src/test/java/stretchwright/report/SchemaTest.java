package stretchwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import stretchwright.ground.Progress;
import stretchwright.intake.MakeFile;
import stretchwright.intake.SampleText;
import stretchwright.make.SampleRooms;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The report and the make files against the shipped JSON Schemas, judged by a validator that is not ours. */
class SchemaTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private static Schema schema(String name) throws IOException {
        try (InputStream in = SchemaTest.class.getResourceAsStream("/stretchwright/" + name)) {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(JSON.readTree(in));
        }
    }

    private static JsonNode report(String text) {
        MakeFile make = SampleRooms.read("a.yaml", text.getBytes(StandardCharsets.UTF_8));
        return JSON.readTree(SampleRooms.run(make, Progress.silent()).report().bytes());
    }

    @Tag("slow")
    @Test
    void theReportKeepsItsContract() throws IOException {
        JsonNode report = report(SampleText.WHOLE);
        assertThat(schema("report.schema.json").validate(report)).isEmpty();
        JsonNode measures = report.get("wearer").get("measurements");
        assertThat(measures.get("hip girth").get("value").asDouble()).isEqualTo(961);
        assertThat(measures.get("hip girth").get("given").asBoolean()).isTrue();
        assertThat(measures.get("knee girth").get("estimated").asBoolean()).isTrue();
        // by hand: 0.5006 kPa / 0.133322 = 3.7548 mmHg
        assertThat(report.at("/fit/levels/0/pressureMmHg").asDouble()).isEqualTo(3.75);
        // by hand: 14.50 per metre times the metres to buy
        double buy = report.at("/lay/buy").asDouble();
        assertThat(report.at("/cost/fabric").asDouble()).isEqualTo(Math.round(buy * 1.45) / 100.0);
    }

    @Tag("slow")
    @Test
    void aReportWithoutBootPriceOrCuffKeepsItToo() throws IOException {
        String plain = SampleText.WHOLE
                .replaceAll("(?s)boot:\n.*?style:", "style:")
                .replace("leg: over boot", "leg: ankle")
                .replace("  price: 14.50 per m\n", "")
                .replace("  cuff: {height: 3.2}\n", "");
        assertThat(schema("report.schema.json").validate(report(plain))).isEmpty();
    }

    /** The schema is no rubber stamp: a renamed, missing or misplaced key is noticed. */
    @Tag("slow")
    @Test
    void theSchemaNoticesABrokenContract() throws IOException {
        Schema schema = schema("report.schema.json");
        for (String pointer :
                List.of("/lay/buy", "/pattern/pieces/0/area", "/fit/levels/0/pressure", "/files/0/name")) {
            JsonNode report = report(SampleText.WHOLE);
            int cut = pointer.lastIndexOf('/');
            ObjectNode parent = (ObjectNode) report.at(pointer.substring(0, cut));
            JsonNode value = parent.remove(pointer.substring(cut + 1));
            assertThat(schema.validate(report)).as(pointer + " missing").isNotEmpty();
            parent.set(pointer.substring(cut + 1) + "X", value);
            assertThat(schema.validate(report)).as(pointer + " renamed").isNotEmpty();
        }
    }

    static Stream<Path> examples() throws IOException {
        try (Stream<Path> all = Files.list(Path.of("examples"))) {
            return all.filter(p -> p.toString().endsWith(".yaml")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void theExamplesFitTheSchemaOfTheMakeFile(Path example) throws IOException {
        Object tree = new Load(LoadSettings.builder().build()).loadFromString(Files.readString(example));
        assertThat(schema("make.schema.json").validate(JSON.valueToTree(tree))).isEmpty();
    }

    private static String fabric(String keys) {
        return SampleText.WHOLE.replaceAll("(?s)fabric:\n.*?boot:", "fabric: {" + keys + "}\nboot:");
    }

    /** Without cloth nothing else of it is needed, and the report says what was taken as usual. */
    @Test
    void aMakeWithoutClothFitsBothSchemas() throws IOException {
        Schema make = schema("make.schema.json");
        Load load = new Load(LoadSettings.builder().build());
        for (String keys : List.of("usual: true", "no cloth yet: true, usable width: 140")) {
            assertThat(make.validate(JSON.valueToTree(load.loadFromString(fabric(keys)))))
                    .isEmpty();
        }
        for (String keys : List.of("name: Ink", "usual: 3", "usable width: 140, stretch across: 60 %")) {
            assertThat(make.validate(JSON.valueToTree(load.loadFromString(fabric(keys)))))
                    .isNotEmpty();
        }
        JsonNode report = report(fabric("usual: true, stretch along: 45 %"));
        assertThat(schema("report.schema.json").validate(report)).isEmpty();
        assertThat(JSON.writeValueAsString(report.at("/fabric/usual")))
                .isEqualTo("[\"usable width\",\"stretch across\"]");
        assertThat(report.at("/fabric/stretchAcrossAssumed").asBoolean()).isTrue();
        assertThat(report.at("/fabric/stretchAlongAssumed").asBoolean()).isFalse();
        assertThat(report(SampleText.WHOLE).at("/fabric").has("usual")).isFalse();
    }

    @Test
    void theSchemaOfTheMakeFileNoticesSlips() throws IOException {
        Schema schema = schema("make.schema.json");
        Load load = new Load(LoadSettings.builder().build());
        for (String slip : List.of(
                SampleText.with("stretch across: 60 %", "stretch across: 60"),
                SampleText.with("hip girth: 96.1", "hop: 96.1"),
                SampleText.with("unit: cm", "unit: ell"),
                SampleText.with("stretchwright: 1", "stretchwright: 2"))) {
            JsonNode tree = JSON.valueToTree(load.loadFromString(slip));
            assertThat(schema.validate(tree)).isNotEmpty();
        }
    }

    @Test
    void theVersionIsThatOfTheBuild() throws IOException {
        assertThat(Files.readString(Path.of("pom.xml"))).contains("<version>" + Program.VERSION + "</version>");
    }

    /** What docs/formats.md tells people a make file may say, the schema allows; a key forgotten there would be refused by editors. */
    @Test
    void everyKeyOfTheTableStandsInTheSchema() throws IOException {
        JsonNode schema;
        try (InputStream in = SchemaTest.class.getResourceAsStream("/stretchwright/make.schema.json")) {
            schema = JSON.readTree(in);
        }
        List<String> keys = keysOfTheTable();
        assertThat(keys).hasSizeGreaterThan(150).contains("sewing.spool", "print.preview", "fabric.flaws[].wide");
        assertThat(keys)
                .allSatisfy(
                        key -> assertThat(allows(schema, schema, key)).as(key).isTrue());
        assertThat(allows(schema, schema, "print.glue")).isFalse();
    }

    private static List<String> keysOfTheTable() throws IOException {
        List<String> keys = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of("docs/formats.md"))) {
            if (line.equals("## The body command")) {
                break;
            }
            Matcher key = Pattern.compile("`([^`]+)`").matcher(line.startsWith("| `") ? line.split("\\|")[1] : "");
            String parent = "";
            while (key.find() && !key.group(1).startsWith("./")) {
                String path = key.group(1);
                keys.add(path.contains(".") ? path : parent + path);
                parent = path.contains(".") ? path.substring(0, path.lastIndexOf('.') + 1) : parent;
            }
        }
        return keys;
    }

    /** Whether some branch of the schema has a property for the first step of the path, and so on. */
    private static boolean allows(JsonNode schema, JsonNode here, String path) {
        if (here.has("$ref")) {
            String at = here.get("$ref").asString().substring(1);
            return allows(schema, schema.at(at), path);
        }
        if (here.has("items") && allows(schema, here.path("items"), path)) {
            return true;
        }
        for (String branches : List.of("anyOf", "oneOf", "allOf")) {
            for (JsonNode branch : here.path(branches)) {
                if (allows(schema, branch, path)) {
                    return true;
                }
            }
        }
        int dot = path.indexOf('.');
        String step = dot < 0 ? path : path.substring(0, dot);
        JsonNode next = here.path("properties").path(step.replace("[]", ""));
        if (next.isMissingNode()) {
            return false;
        }
        return dot < 0 || allows(schema, next, path.substring(dot + 1));
    }
}
