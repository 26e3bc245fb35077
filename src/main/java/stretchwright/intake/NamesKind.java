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

/** Several names, or one without a list. */
record NamesKind() implements Kind<List<String>> {
    @Override
    public Optional<List<String>> read(Spot at) {
        if (at.isText()) {
            return at.text().map(List::of);
        }
        Optional<List<Tree>> items = at.items();
        if (items.isEmpty()) {
            return Optional.empty();
        }
        List<String> all = new ArrayList<>();
        for (Tree item : items.get()) {
            if (item instanceof Tree.Text text) {
                all.add(text.text().strip());
            } else {
                at.of(item).add(Tell.said("names.hold", item.said()), at.likeThis());
            }
        }
        return Optional.of(all);
    }

    @Override
    public ObjectNode schema() {
        return Schemas.either(Schemas.text(), Schemas.list(Schemas.text(), 0, Integer.MAX_VALUE));
    }

    @Override
    public Said allowed() {
        return Tell.said("allowed.names");
    }

    @Override
    public JsonNode json(List<String> values) {
        ArrayNode out = JsonNodeFactory.instance.arrayNode();
        values.forEach(out::add);
        return out;
    }

    @Override
    public Part shown(List<String> values) {
        return Tell.words(values);
    }

    @Override
    public Input input() {
        return Input.LIST;
    }
}
