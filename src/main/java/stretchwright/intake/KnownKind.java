package stretchwright.intake;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;

/**
 * A text of which somebody else knows what it may be: a paper, a date.
 *
 * @param isNot key of what is said where it is not known
 * @param write key of how to write it, and of what is allowed
 * @param words some of them, to choose from; empty where there are too many
 * @param shape what an editor lets through
 */
record KnownKind(Predicate<String> knows, String isNot, String write, List<String> words, ObjectNode schema)
        implements Kind<String> {
    @Override
    public Optional<String> read(Spot at) {
        return at.text().filter(text -> known(text, at));
    }

    private boolean known(String text, Spot at) {
        if (!knows.test(text)) {
            at.add(Tell.said(isNot, Tell.quoted(text)), meant(text));
            return false;
        }
        return true;
    }

    private Said meant(String text) {
        return Nearest.to(text, words)
                .map(n -> Tell.said("word.meant", Part.text(n)).and(Tell.said(write)))
                .orElse(Tell.said(write));
    }

    @Override
    public ObjectNode schema() {
        return schema.deepCopy();
    }

    @Override
    public Said allowed() {
        return Tell.said(write);
    }

    @Override
    public JsonNode json(String value) {
        return StringNode.valueOf(value);
    }

    @Override
    public Part shown(String value) {
        return Part.text(value);
    }
}
