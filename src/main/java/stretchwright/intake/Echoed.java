package stretchwright.intake;

import java.util.Optional;
import java.util.function.Function;
import tools.jackson.databind.JsonNode;

/**
 * How the report repeats a key.
 *
 * @param name inside its section, with dots into objects: "waistband.elastic"; empty for the key's own
 * @param value what stands there where it is not simply the key's value
 * @param assumed whether the value was assumed and not measured, told beside it; empty where it never is
 */
public record Echoed<T>(
        boolean told,
        String name,
        Optional<Function<MakeFile, Optional<JsonNode>>> value,
        Optional<Function<MakeFile, Boolean>> assumed) {
    static <T> Echoed<T> plainly() {
        return as("");
    }

    static <T> Echoed<T> as(String name) {
        return new Echoed<>(true, name, Optional.empty(), Optional.empty());
    }

    static <T> Echoed<T> not() {
        return new Echoed<>(false, "", Optional.empty(), Optional.empty());
    }

    static <T> Echoed<T> as(String name, Function<MakeFile, Optional<JsonNode>> value) {
        return new Echoed<>(true, name, Optional.of(value), Optional.empty());
    }

    Echoed<T> orAssumed(Function<MakeFile, Boolean> is) {
        return new Echoed<>(told, name, value, Optional.of(is));
    }
}
