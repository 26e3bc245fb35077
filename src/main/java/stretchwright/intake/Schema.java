package stretchwright.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The table of keys as JSON Schema (draft 2020-12), for editors: it catches slips of shape while writing. */
public final class Schema {
    private final Keys table;

    private Schema(Keys table) {
        this.table = table;
    }

    /** Of a whole make file. */
    public static ObjectNode of(Keys table) {
        ObjectNode out = Schemas.node();
        out.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        out.put("$id", "urn:stretchwright:make:" + MakeFile.VERSION);
        out.put("title", say(Tell.said("schema.title", stretchwright.ground.Part.count(MakeFile.VERSION))));
        out.put("description", say(Tell.said("schema.about")));
        ObjectNode definitions = out.putObject("$defs");
        definitions.set(LengthKind.DEFINED, LengthKind.definition());
        definitions.set(LengthsKind.DEFINED, LengthsKind.definition());
        definitions.set(ShareKind.DEFINED, ShareKind.definition());
        out.setAll(section(table));
        return out;
    }

    /** Of the keys that stand at the top of a table. */
    static ObjectNode section(Keys table) {
        return new Schema(table).section("");
    }

    private ObjectNode section(String section) {
        ObjectNode out = Schemas.type("object");
        ObjectNode properties = out.putObject("properties");
        ArrayNode needed = Schemas.node().putArray("required");
        List<ObjectNode> either = new ArrayList<>();
        Map<String, List<String>> groups = new LinkedHashMap<>();
        List<String> standIns = new ArrayList<>();
        for (Key<?> key : table.inside(section)) {
            property(properties, key);
            List<String> names = new ArrayList<>(List.of(key.name()));
            names.addAll(key.synonyms());
            if (key.need().always() && names.size() == 1) {
                needed.add(key.name());
            } else if (key.need().always()) {
                either.add(oneOf(names));
            } else if (!key.need().oneOf().isEmpty()) {
                groups.computeIfAbsent(key.need().oneOf(), g -> new ArrayList<>())
                        .addAll(names);
            } else if (key.need().standsIn()) {
                standIns.addAll(names);
            }
        }
        groups.values().forEach(names -> {
            names.addAll(standIns);
            either.add(oneOf(names));
        });
        if (!needed.isEmpty()) {
            out.set("required", needed);
        }
        if (!either.isEmpty()) {
            either.forEach(out.putArray("allOf")::add);
        }
        return out.put("additionalProperties", false);
    }

    /** One of these names must be there. */
    private static ObjectNode oneOf(List<String> names) {
        ObjectNode out = Schemas.node();
        ArrayNode any = out.putArray("anyOf");
        names.forEach(n -> any.addObject().putArray("required").add(n));
        return out;
    }

    private void property(ObjectNode properties, Key<?> key) {
        ObjectNode shape = shape(key);
        shape.put("description", say(key.help()));
        properties.set(key.name(), shape);
        for (String synonym : key.synonyms()) {
            properties.putObject(synonym).put("description", say(Tell.said("schema.same", Tell.quoted(key.name()))));
        }
    }

    private ObjectNode shape(Key<?> key) {
        if (table.inside(key.path()).isEmpty()) {
            return key.kind().schema();
        }
        ObjectNode section = section(key.path());
        if (!(key.kind() instanceof SectionKind kind)) {
            return Schemas.either(key.kind().schema(), section);
        }
        if (!kind.empty()) {
            section.put("minProperties", 1);
        }
        if (kind.instead().isPresent()) {
            Key<?> inside = table.find(key.path() + "." + kind.instead().get()).orElseThrow();
            return Schemas.either(inside.kind().schema(), section);
        }
        return kind.none() ? Schemas.either(kind.schema(), section) : section;
    }

    private static String say(Said said) {
        return Voice.plain().say(said);
    }
}
