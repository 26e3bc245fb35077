package stretchwright.intake;

import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.BooleanNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Keys of its own. Its value is whether it is there.
 *
 * @param none whether the word "none" may stand instead
 * @param instead name of the key inside of which the value may stand instead: lay: open is lay: {way: open}
 * @param empty whether it may be without a key
 */
record SectionKind(boolean none, Optional<String> instead, boolean empty) implements Kind<Boolean> {
    /** What stands for nothing. */
    static final String NONE = "none";

    /** The value that stands instead of the section; the reader of the table looks after the keys inside. */
    @Override
    public Optional<Boolean> read(Spot at) {
        if (none && at.tree() instanceof Tree.Text text && text.text().strip().equals(NONE)) {
            return Optional.of(false);
        }
        at.add(
                Spot.isEmpty(at.tree())
                        ? Tell.said("section.none")
                        : Tell.said("section.wanted", at.tree().said()),
                at.likeThis());
        return Optional.empty();
    }

    @Override
    public ObjectNode schema() {
        return Schemas.words(java.util.List.of(NONE));
    }

    @Override
    public Said allowed() {
        return none ? Tell.said("allowed.none") : Said.NOTHING;
    }

    @Override
    public JsonNode json(Boolean there) {
        return BooleanNode.valueOf(there);
    }

    @Override
    public Part shown(Boolean there) {
        return Part.text(String.valueOf(there));
    }

    @Override
    public Input input() {
        return Input.SECTION;
    }
}
