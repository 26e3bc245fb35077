package stretchwright.intake;

import java.util.List;
import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.BooleanNode;
import tools.jackson.databind.node.ObjectNode;

/** Yes or no, written true or false. */
record YesKind() implements Kind<Boolean> {
    private static final ChoiceKind<Boolean> WORDS = ChoiceKind.of(List.of(true, false), b -> b.toString());

    @Override
    public Optional<Boolean> read(Spot at) {
        return WORDS.read(at);
    }

    @Override
    public ObjectNode schema() {
        return Schemas.type("boolean");
    }

    @Override
    public Said allowed() {
        return WORDS.allowed();
    }

    @Override
    public JsonNode json(Boolean value) {
        return BooleanNode.valueOf(value);
    }

    @Override
    public Part shown(Boolean value) {
        return WORDS.shown(value);
    }

    @Override
    public List<String> words() {
        return WORDS.words();
    }

    @Override
    public Input input() {
        return Input.CHECK;
    }
}
