package stretchwright.intake;

import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;

/** A name for people: short, without control characters. */
public record NameKind() implements Kind<String> {
    /** Letters of the longest name. */
    public static final int LONGEST = 120;

    @Override
    public Optional<String> read(Spot at) {
        return at.text().filter(text -> good(text, at));
    }

    private static boolean good(String text, Spot at) {
        if (!isName(text)) {
            at.add(isNot(), write());
            return false;
        }
        return true;
    }

    public static boolean isName(String text) {
        return text.length() <= LONGEST && text.codePoints().noneMatch(Echo::isNoLetter);
    }

    /** What is said of a text that is none. */
    public static Said isNot() {
        return Tell.said("name.is-not");
    }

    public static Said write() {
        return Tell.said("name.write", Part.count(LONGEST));
    }

    @Override
    public ObjectNode schema() {
        ObjectNode out = Schemas.numberOrText();
        return out.put("minLength", 1);
    }

    @Override
    public Said allowed() {
        return Tell.said("allowed.name", Part.count(LONGEST));
    }

    @Override
    public JsonNode json(String value) {
        return StringNode.valueOf(value);
    }

    @Override
    public Part shown(String value) {
        return Tell.quoted(value);
    }
}
