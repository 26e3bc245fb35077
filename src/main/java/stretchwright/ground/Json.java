package stretchwright.ground;

import java.nio.charset.StandardCharsets;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** How all files in JSON are written: two spaces in, a line feed at each end, the same bytes on every machine. */
public final class Json {
    private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");
    private static final JsonMapper WRITER = JsonMapper.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .enable(SerializationFeature.INDENT_OUTPUT)
            .defaultPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(INDENT))
            .build();

    private Json() {}

    public static ObjectNode node() {
        return JsonNodeFactory.instance.objectNode();
    }

    public static byte[] bytes(ObjectNode node) {
        byte[] json = WRITER.writeValueAsBytes(node);
        byte[] line = java.util.Arrays.copyOf(json, json.length + 1);
        line[json.length] = '\n';
        return line;
    }

    public static String text(ObjectNode node) {
        return new String(bytes(node), StandardCharsets.UTF_8);
    }
}
