package stretchwright.intake;

import java.util.Collection;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Parts of a JSON Schema. */
final class Schemas {
    private Schemas() {}

    static ObjectNode node() {
        return JsonNodeFactory.instance.objectNode();
    }

    static ObjectNode type(String type) {
        return node().put("type", type);
    }

    /** A number, bare or with words behind it: what it may be is left to the reader. */
    static ObjectNode numberOrText() {
        ObjectNode out = node();
        out.putArray("type").add("number").add("string");
        return out;
    }

    static ObjectNode text() {
        return type("string").put("minLength", 1);
    }

    static ObjectNode matching(String pattern) {
        return type("string").put("pattern", pattern);
    }

    static ObjectNode reference(String name) {
        return node().put("$ref", "#/$defs/" + name);
    }

    static ObjectNode words(Collection<String> words) {
        ObjectNode out = node();
        ArrayNode list = out.putArray("enum");
        words.forEach(list::add);
        return out;
    }

    static ObjectNode either(ObjectNode... shapes) {
        ObjectNode out = node();
        ArrayNode list = out.putArray("anyOf");
        for (ObjectNode shape : shapes) {
            list.add(shape);
        }
        return out;
    }

    static ObjectNode list(ObjectNode items, int least, int most) {
        ObjectNode out = type("array");
        out.set("items", items);
        if (least > 0) {
            out.put("minItems", least);
        }
        return most < Integer.MAX_VALUE ? out.put("maxItems", most) : out;
    }

    /** A list of exactly these two. */
    static ObjectNode pair(ObjectNode first, ObjectNode second) {
        ObjectNode out = type("array");
        out.putArray("prefixItems").add(first).add(second);
        return out.put("items", false).put("minItems", 2);
    }
}
