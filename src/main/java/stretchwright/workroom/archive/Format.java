package stretchwright.workroom.archive;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stretchwright.workroom.store.Change;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Links;
import stretchwright.workroom.store.Names;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Step;
import stretchwright.workroom.store.Thing;
import stretchwright.workroom.store.Version;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Rows as lines of JSON, and back. */
final class Format {
    /** Version of the format. */
    static final int VERSION = 1;

    static final String MANIFEST = "manifest.json";
    static final String MARK = "workroom";

    /** The parts of an archive behind the manifest, in their order, each with the table whose rows it holds. */
    static final List<String> TABLES = List.of("thing", "version", "step", "change");

    private static final JsonMapper JSON = JsonMapper.builder().build();

    private Format() {}

    static String part(String table) {
        return table + "s.ndjson";
    }

    /** A line that is no such row. */
    static final class WrongLine extends RuntimeException {
        private static final long serialVersionUID = 1L;

        WrongLine(String what) {
            super(what);
        }
    }

    static ObjectNode node() {
        return JSON.createObjectNode();
    }

    static String line(ObjectNode node) {
        return JSON.writeValueAsString(node) + "\n";
    }

    static JsonNode read(String line) {
        try {
            return JSON.readTree(line);
        } catch (tools.jackson.core.JacksonException e) {
            throw new WrongLine("JSON");
        }
    }

    static ObjectNode of(Thing t) {
        return links(
                node().put("id", t.id())
                        .put("kind", t.kind().word())
                        .put("name", t.name())
                        .put("now", t.now())
                        .put("place", word(t.place()))
                        .put("changed", t.changed()),
                t.links());
    }

    static Thing thing(JsonNode n) {
        return new Thing(
                id(n, "id"),
                Kind.of(text(n, "kind")).orElseThrow(() -> new WrongLine("kind")),
                name(n),
                number(n, "now"),
                place(n, "place"),
                links(n),
                number(n, "changed"));
    }

    static ObjectNode of(Version v) {
        ObjectNode out = links(
                node().put("thing", v.thing())
                        .put("number", v.number())
                        .put("name", v.name())
                        .put("text", v.text())
                        .put("program", v.program())
                        .put("at", v.at()),
                v.links());
        v.figures().ifPresent(f -> out.put("figures", f));
        return out;
    }

    static Version version(JsonNode n) {
        return new Version(
                id(n, "thing"),
                number(n, "number"),
                name(n),
                whole(n, "text"),
                links(n),
                n.has("figures") ? Optional.of(whole(n, "figures")) : Optional.empty(),
                word(n, "program", Names.LONGEST_PROGRAM),
                number(n, "at"));
    }

    static ObjectNode of(Step s) {
        return node().put("number", s.number())
                .put("at", s.at())
                .put("what", s.what())
                .put("about", s.about())
                .put("state", s.state().name().toLowerCase(Locale.ROOT));
    }

    static Step step(JsonNode n) {
        return new Step(
                number(n, "number"),
                number(n, "at"),
                word(n, "what", Names.LONGEST_WHAT),
                text(n, "about"),
                state(text(n, "state")));
    }

    private static Step.State state(String word) {
        for (Step.State state : Step.State.values()) {
            if (state.name().toLowerCase(Locale.ROOT).equals(word)) {
                return state;
            }
        }
        throw new WrongLine("state");
    }

    static ObjectNode of(Change c) {
        return node().put("step", c.step())
                .put("part", c.part())
                .put("thing", c.thing())
                .put("was", c.was())
                .put("now", c.now())
                .put("wasAt", word(c.wasAt()))
                .put("nowAt", word(c.nowAt()));
    }

    static Change change(JsonNode n) {
        return new Change(
                number(n, "step"),
                (int) number(n, "part"),
                id(n, "thing"),
                number(n, "was"),
                number(n, "now"),
                place(n, "wasAt"),
                place(n, "nowAt"));
    }

    private static ObjectNode links(ObjectNode out, Links l) {
        return out.put("origin", l.origin())
                .put("wearer", l.wearer())
                .put("fabric", l.fabric())
                .put("boot", l.boot())
                .put("style", l.style());
    }

    private static Links links(JsonNode n) {
        return new Links(link(n, "origin"), link(n, "wearer"), link(n, "fabric"), link(n, "boot"), link(n, "style"));
    }

    private static String word(Place place) {
        return place.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static Place place(JsonNode n, String field) {
        String word = text(n, field);
        for (Place place : Place.values()) {
            if (word(place).equals(word)) {
                return place;
            }
        }
        throw new WrongLine(field);
    }

    private static String link(JsonNode n, String field) {
        String id = text(n, field);
        return id.isEmpty() ? id : id(n, field);
    }

    private static String id(JsonNode n, String field) {
        String id = text(n, field);
        if (!id.matches("[0-9a-f-]{8,36}")) {
            throw new WrongLine(field);
        }
        return id;
    }

    private static String name(JsonNode n) {
        String name = text(n, "name");
        if (Names.wrongName(name).isPresent()) {
            throw new WrongLine("name");
        }
        return name;
    }

    private static String whole(JsonNode n, String field) {
        String text = text(n, field);
        if (Names.wrongText(text).isPresent()) {
            throw new WrongLine(field);
        }
        return text;
    }

    private static String text(JsonNode n, String field) {
        JsonNode value = n.path(field);
        if (!value.isString() || Names.wrongText(value.asString()).isPresent()) {
            throw new WrongLine(field);
        }
        return value.asString();
    }

    private static String word(JsonNode n, String field, int longest) {
        String word = text(n, field);
        if (word.length() > longest) {
            throw new WrongLine(field);
        }
        return word;
    }

    private static long number(JsonNode n, String field) {
        JsonNode value = n.path(field);
        if (!value.isIntegralNumber() || !value.canConvertToLong() || value.asLong() < 0) {
            throw new WrongLine(field);
        }
        return value.asLong();
    }
}
