package stretchwright.ground;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * How all files in JSON are written: two spaces in, a line feed at each end, the same bytes on every machine. Node by node:
 * setting Jackson up for whatever objects there are takes longer than a whole report.
 */
public final class Json {
    private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");
    private static final JsonFactory WRITER = JsonFactory.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();
    private static final ObjectWriteContext INDENTED = new ObjectWriteContext.Base() {
        @Override
        public boolean hasPrettyPrinter() {
            return true;
        }

        @Override
        public PrettyPrinter getPrettyPrinter() {
            return new DefaultPrettyPrinter().withObjectIndenter(INDENT);
        }
    };

    private Json() {}

    public static ObjectNode node() {
        return JsonNodeFactory.instance.objectNode();
    }

    public static byte[] bytes(ObjectNode node) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (JsonGenerator json = WRITER.createGenerator(INDENTED, out)) {
            write(node, json);
        }
        out.write('\n');
        return out.toByteArray();
    }

    public static String text(ObjectNode node) {
        return new String(bytes(node), StandardCharsets.UTF_8);
    }

    private static void write(JsonNode node, JsonGenerator json) {
        switch (node.getNodeType()) {
            case OBJECT -> {
                json.writeStartObject();
                for (Map.Entry<String, JsonNode> field : node.properties()) {
                    json.writeName(field.getKey());
                    write(field.getValue(), json);
                }
                json.writeEndObject();
            }
            case ARRAY -> {
                json.writeStartArray();
                node.forEach(item -> write(item, json));
                json.writeEndArray();
            }
            case STRING -> json.writeString(node.asString());
            case BOOLEAN -> json.writeBoolean(node.asBoolean());
            case NUMBER -> number(node, json);
            case NULL -> json.writeNull();
            default -> throw new IllegalArgumentException("nothing writes " + node.getNodeType() + " into a file");
        }
    }

    private static void number(JsonNode node, JsonGenerator json) {
        if (node.isInt() || node.isLong()) {
            json.writeNumber(node.asLong());
        } else if (node.isBigInteger()) {
            json.writeNumber(node.bigIntegerValue());
        } else if (node.isBigDecimal()) {
            json.writeNumber(node.decimalValue());
        } else {
            json.writeNumber(node.doubleValue());
        }
    }
}
