package stretchwright.intake;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Several of some words, each once, in the order of the file; one of them may stand without a list. */
record WordsKind<T>(ChoiceKind<T> each) implements Kind<Set<T>> {
    @Override
    public Optional<Set<T>> read(Spot at) {
        if (at.isText()) {
            return each.read(at).map(Set::of);
        }
        Optional<List<Tree>> items = at.items();
        if (items.isEmpty()) {
            return Optional.empty();
        }
        Set<T> all = new LinkedHashSet<>();
        for (Tree item : items.get()) {
            Optional<T> one = each.read(at.of(item));
            if (one.isPresent() && !all.add(one.get())) {
                at.of(item)
                        .add(
                                Tell.said("words.twice", Tell.quoted(each.word().apply(one.get()))),
                                Tell.said("words.once"));
            }
        }
        return Optional.of(all);
    }

    @Override
    public ObjectNode schema() {
        ObjectNode list = Schemas.list(each.schema(), 0, Integer.MAX_VALUE).put("uniqueItems", true);
        return Schemas.either(each.schema(), list);
    }

    @Override
    public Said allowed() {
        return Tell.said("allowed.several", Tell.words(words()));
    }

    @Override
    public JsonNode json(Set<T> values) {
        ArrayNode out = JsonNodeFactory.instance.arrayNode();
        values.forEach(v -> out.add(each.word().apply(v)));
        return out;
    }

    @Override
    public Part shown(Set<T> values) {
        return Tell.words(values.stream().map(each.word()).collect(Collectors.toList()));
    }

    @Override
    public List<String> words() {
        return each.words();
    }

    @Override
    public Input input() {
        return Input.MANY;
    }
}
