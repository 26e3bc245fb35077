package stretchwright.intake;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;

/**
 * One of some words.
 *
 * @param word how each value is written
 * @param plain everyday words for them, which are understood too
 * @param elsewhere words that are written somewhere else: keys of where
 */
record ChoiceKind<T>(List<T> values, Function<T, String> word, Map<String, T> plain, Map<String, String> elsewhere)
        implements Kind<T> {
    ChoiceKind {
        values = List.copyOf(values);
        plain = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(plain));
    }

    static <T> ChoiceKind<T> of(List<T> values, Function<T, String> word) {
        return new ChoiceKind<>(values, word, Map.of(), Map.of());
    }

    /** The words of an enum as the make file has them: OVER_BOOT is "over boot". */
    static <E extends Enum<E>> ChoiceKind<E> of(Class<E> type) {
        return of(List.of(type.getEnumConstants()), ChoiceKind::lower);
    }

    static String lower(Enum<?> value) {
        return value.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }

    /** With everyday words for one of the values. */
    ChoiceKind<T> also(T value, String... everyday) {
        Map<String, T> more = new LinkedHashMap<>(plain);
        Stream.of(everyday).forEach(w -> more.put(w, value));
        return new ChoiceKind<>(values, word, more, elsewhere);
    }

    /** A word that belongs somewhere else, and the key of the sentence that says where. */
    ChoiceKind<T> not(String text, String where) {
        return new ChoiceKind<>(values, word, plain, Map.of(text, where));
    }

    Optional<T> find(String text) {
        return values.stream()
                .filter(v -> word.apply(v).equals(text))
                .findFirst()
                .or(() -> Optional.ofNullable(plain.get(text)));
    }

    @Override
    public Optional<T> read(Spot at) {
        return at.text().flatMap(text -> read(text, at));
    }

    private Optional<T> read(String text, Spot at) {
        Optional<T> found = find(text);
        if (found.isEmpty()) {
            at.add(Tell.said("word.unknown", Tell.quoted(text)), choose(text));
        }
        return found;
    }

    /** The word that may be meant, and all of them. */
    Said choose(String text) {
        String where = elsewhere.get(text);
        if (where != null) {
            return Tell.said(where);
        }
        Said all = Tell.said("word.choose", Tell.words(words()));
        return Nearest.to(
                        text,
                        Stream.concat(words().stream(), plain.keySet().stream()).toList())
                .map(n -> Tell.said("word.meant", Part.text(n)).and(all))
                .orElse(all);
    }

    @Override
    public List<String> words() {
        return values.stream().map(word).toList();
    }

    @Override
    public ObjectNode schema() {
        return Schemas.words(
                Stream.concat(words().stream(), plain.keySet().stream()).toList());
    }

    @Override
    public Said allowed() {
        return Tell.said("allowed.words", Tell.words(words()));
    }

    @Override
    public JsonNode json(T value) {
        return StringNode.valueOf(word.apply(value));
    }

    @Override
    public Part shown(T value) {
        return Part.text(word.apply(value));
    }

    @Override
    public Input input() {
        return Input.CHOICE;
    }
}
