package stretchwright.ground;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.junit.jupiter.api.Test;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Jackson's own writing of whole trees is the second opinion. */
class JsonTest {
    private static final JsonMapper PLAIN = JsonMapper.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .enable(SerializationFeature.INDENT_OUTPUT)
            .defaultPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")))
            .build();

    @Test
    void everyKindOfNodeIsWrittenAsJacksonWritesIt() {
        ObjectNode node = Json.node();
        node.put("words", "quotes \" \\ / \u0007 \n \u00E9 \u2028 \uD83D\uDE00")
                .put("yes", true)
                .putNull("none");
        node.put("whole", -3).put("long", 1L << 40).put("double", 0.1).put("large", 1e30);
        node.put("decimal", new BigDecimal("1E+3")).put("huge", BigInteger.TWO.pow(80));
        node.putArray("list")
                .add(1)
                .add(new BigDecimal("2.50"))
                .add("three")
                .addObject()
                .put("four", 4);
        node.putArray("empty");
        node.putObject("nothing");
        assertThat(Json.text(node)).isEqualTo(PLAIN.writeValueAsString(node) + "\n");
    }
}
