package stretchwright.intake;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** What may stand under a key: how it is read, told to an editor, asked for on a page and shown again. */
public interface Kind<T> {
    /** The value; empty with at least one finding where it is none (or where the file's unit is missing). */
    Optional<T> read(Spot at);

    /** What an editor lets through, as JSON Schema. */
    ObjectNode schema();

    /** What is allowed: "200 to 4000 mm". */
    Said allowed();

    /** As the report repeats it: lengths in mm, shares, words. */
    JsonNode json(T value);

    /** As people are told it, in their unit. */
    Part shown(T value);

    /** The same as written, with this unit behind each number that took the file's: it may then stand in any file. */
    default Tree carrying(Tree written, Unit unit) {
        return written;
    }

    /** How a page asks for it. */
    default Input input() {
        return Input.TEXT;
    }

    /** The words to choose from; empty where it is no choice. */
    default List<String> words() {
        return List.of();
    }

    /** What stands behind the number: "mm" for lengths in any unit, "%", "g/m2"; empty where nothing does. */
    default String symbol() {
        return "";
    }

    /** The number that is compared with another make's; empty where words are. */
    default OptionalDouble amount(T value) {
        return OptionalDouble.empty();
    }

    /** From least to most; empty where it has no such range. */
    default Optional<Range> within() {
        return Optional.empty();
    }

    /** Of a list of sections the keys of one; without a row otherwise. */
    default Keys parts() {
        return Keys.NONE;
    }

    /** Of a section the name of the key inside of which the value may stand instead; empty otherwise. */
    default Optional<String> instead() {
        return Optional.empty();
    }

    /** How a page asks. */
    enum Input {
        TEXT,
        CHOICE,
        /** Yes or no. */
        CHECK,
        /** Several of the words. */
        MANY,
        /** Several values, separated by semicolons. */
        LIST,
        /** Pairs of values: "20 % = 3.1 N; 40 % = 6.9 N". */
        PAIRS,
        /** Keys of its own: a part of the page. */
        SECTION,
        /** A list of such parts. */
        SECTIONS
    }
}
