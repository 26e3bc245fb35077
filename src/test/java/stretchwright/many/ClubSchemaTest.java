package stretchwright.many;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Progress;
import stretchwright.intake.MakeFile;
import stretchwright.lay.SearchWork;
import stretchwright.lay.nest.Effort;
import stretchwright.make.Make;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** club.json of clubs of examples against the shipped JSON Schema, judged by a validator that is not ours. */
class ClubSchemaTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private static Schema schema(String name) throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(shipped(name));
    }

    private static MakeFile example(String old, String now) throws IOException {
        String text = Files.readString(Path.of("examples/evening-practice.yaml"));
        assertThat(text).contains(old);
        return Make.read("evening-practice.yaml", text.replace(old, now).getBytes(StandardCharsets.UTF_8));
    }

    private static JsonNode club(List<MakeFile> makes, OptionalDouble table, Effort effort) {
        Club.Wish wish = new Club.Wish(table, SearchWork.of(1, effort));
        return JSON.readTree(
                Club.of(makes, wish, Progress.silent()).documents().get(0).bytes());
    }

    private static JsonNode two() throws IOException {
        MakeFile make = example("name: Rowan", "name: Rowan");
        return club(List.of(make, make), OptionalDouble.of(1600), Effort.NONE);
    }

    @Test
    void twoTablesKeepTheContract() throws IOException {
        JsonNode json = two();
        assertThat(json.at("/club/tables").size()).isEqualTo(2);
        assertThat(json.at("/club/tableLength").asDouble()).isEqualTo(1600);
        assertThat(schema("club.schema.json").validate(json)).isEmpty();
    }

    /** In one spread; folded off the middle and part folded tell how far it lies double. */
    @Tag("slow")
    @Test
    void everyWayOfLayingKeepsIt() throws IOException {
        for (String way : List.of("any", "folded", "open", "folded off the middle", "part folded")) {
            MakeFile make = example("  lay: any", "  lay: " + way);
            JsonNode json = club(List.of(make), OptionalDouble.empty(), new Effort(1, 1));
            assertThat(schema("club.schema.json").validate(json)).as(way).isEmpty();
        }
    }

    /** The schema is no rubber stamp: a renamed or missing key, at every depth, is noticed. */
    @Test
    void theSchemaNoticesABrokenContract() throws IOException {
        Schema schema = schema("club.schema.json");
        JsonNode json = two();
        List<String> pointers = Stream.of(
                        keys(json, ""),
                        keys(json, "/program"),
                        keys(json, "/club"),
                        keys(json, "/club/sum"),
                        keys(json, "/club/garments/1"),
                        keys(json, "/club/tables/0"),
                        keys(json, "/club/tables/0/placements/0"),
                        keys(json, "/club/tables/0/guide/0"))
                .flatMap(s -> s)
                .toList();
        assertThat(pointers).hasSizeGreaterThan(50);
        for (String pointer : pointers) {
            int cut = pointer.lastIndexOf('/');
            ObjectNode parent = (ObjectNode) json.at(pointer.substring(0, cut));
            String key = pointer.substring(cut + 1);
            JsonNode value = parent.remove(key);
            // these are left out where there is nothing to say
            boolean free = List.of("tableLength", "rounds", "doubled", "onHand").contains(key);
            assertThat(schema.validate(json).isEmpty()).as(pointer + " missing").isEqualTo(free);
            parent.set(key + "X", value);
            assertThat(schema.validate(json)).as(pointer + " renamed").isNotEmpty();
            parent.remove(key + "X");
            parent.set(key, value);
        }
        assertThat(schema.validate(json)).isEmpty();
    }

    private static Stream<String> keys(JsonNode json, String pointer) {
        JsonNode node = pointer.isEmpty() ? json : json.at(pointer);
        return node.propertyNames().stream().map(k -> pointer + "/" + k);
    }

    /** What both say, they say the same way: the placements, the order of cutting and the sum. */
    @Test
    void whatTheReportSaysTooHasTheSameSchema() throws IOException {
        JsonNode club = shipped("club.schema.json").at("/properties/club/properties");
        JsonNode lay = shipped("report.schema.json").at("/properties/lay/properties");
        JsonNode table = club.at("/tables/items/properties");
        for (String key : List.of("method", "doubled", "fabricWidth", "use", "floor", "placements", "guide")) {
            assertThat(table.get(key)).as(key).isNotNull().isEqualTo(lay.get(key));
        }
        assertThat(club.get("sum")).isNotNull().isEqualTo(lay.get("sum"));
    }

    private static JsonNode shipped(String name) throws IOException {
        try (InputStream in = ClubSchemaTest.class.getResourceAsStream("/stretchwright/" + name)) {
            return JSON.readTree(in);
        }
    }
}
