package stretchwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A list of sections, all with the same keys.
 *
 * @param inside the table of those keys
 * @param none whether the word "none" may stand instead
 */
record SectionsKind(Keys inside, int most, boolean none) implements Kind<List<Answers>> {
    /** Its sections are read by the reader of the table, one by one: {@link #sections}. */
    @Override
    public Optional<List<Answers>> read(Spot at) {
        throw new IllegalStateException("sections are read by the reader of the table");
    }

    /** The sections of the list; what is none is a finding. */
    List<Tree.Keys> sections(Spot at) {
        List<Tree.Keys> out = new ArrayList<>();
        if (none && at.tree() instanceof Tree.Text text && text.text().strip().equals(SectionKind.NONE)) {
            return out;
        }
        List<Tree> all = at.items().orElse(List.of());
        if (all.size() > most) {
            at.add(Tell.said("sections.count", Part.count(all.size())), Tell.said("sections.most", Part.count(most)));
            return out;
        }
        for (Tree item : all) {
            if (item instanceof Tree.Keys section) {
                out.add(section);
            } else {
                at.of(item).add(Tell.said("sections.hold", item.said()), at.likeThis());
            }
        }
        return out;
    }

    @Override
    public ObjectNode schema() {
        ObjectNode list = Schemas.list(Schema.section(inside), 0, most);
        return none ? Schemas.either(Schemas.words(List.of(SectionKind.NONE)), list) : list;
    }

    @Override
    public Said allowed() {
        return Tell.said("allowed.most", Part.count(most));
    }

    @Override
    public JsonNode json(List<Answers> all) {
        ArrayNode out = JsonNodeFactory.instance.arrayNode();
        all.forEach(one -> out.add(ofOne(one)));
        return out;
    }

    private ObjectNode ofOne(Answers answers) {
        ObjectNode out = Schemas.node();
        inside.all().forEach(key -> put(out, key, answers));
        return out;
    }

    private static <T> void put(ObjectNode out, Key<T> key, Answers answers) {
        key.of(answers).ifPresent(value -> out.set(key.camel(), key.kind().json(value)));
    }

    @Override
    public Part shown(List<Answers> all) {
        return Tell.said("sections.shown", Part.count(all.size()));
    }

    @Override
    public Input input() {
        return Input.SECTIONS;
    }

    @Override
    public Keys parts() {
        return inside;
    }
}
