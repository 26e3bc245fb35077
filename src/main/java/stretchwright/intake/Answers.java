package stretchwright.intake;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a file says under each key that stands in it, as it was understood: lengths in mm, shares, words as values. In the
 * order of the file. What is not there is not in it either; usual values are those of the table.
 */
public final class Answers {
    public static final Answers NONE = new Answers(Map.of());

    private final Map<String, Object> values;

    Answers(Map<String, Object> values) {
        this.values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    /** The same with another value. */
    <T> Answers with(String path, T value) {
        Map<String, Object> changed = new LinkedHashMap<>(values);
        changed.put(path, value);
        return new Answers(changed);
    }

    /** A path has one key, and a key one kind of value: what is put under it is what is found there. */
    @SuppressWarnings("unchecked")
    <T> Optional<T> at(String path) {
        return Optional.ofNullable((T) values.get(path));
    }

    @Override
    public boolean equals(@org.jspecify.annotations.Nullable Object other) {
        return other instanceof Answers same && same.values.equals(values);
    }

    @Override
    public int hashCode() {
        return values.hashCode();
    }

    @Override
    public String toString() {
        return values.toString();
    }
}
