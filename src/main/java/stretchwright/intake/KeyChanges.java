package stretchwright.intake;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;

/** By which keys two makes differ, as the second one's file would say it. */
public final class KeyChanges {
    private KeyChanges() {}

    /** Of each key the value as written; empty where the second one leaves it out. */
    public static Map<String, String> between(MakeFile before, MakeFile after) {
        Map<String, String> out = new LinkedHashMap<>();
        for (Key<?> key : Table.keys().all()) {
            if (key.input() != Kind.Input.SECTION && key.input() != Kind.Input.SECTIONS) {
                changed(key, before, after).ifPresent(value -> out.put(key.path(), value));
            }
        }
        return out;
    }

    private static <T> Optional<String> changed(Key<T> key, MakeFile before, MakeFile after) {
        Optional<T> was = key.lens().get().apply(before);
        Optional<T> is = key.lens().get().apply(after);
        return was.equals(is)
                ? Optional.empty()
                : Optional.of(is.map(v -> written(key.kind().json(v), key.kind().symbol()))
                        .orElse(""));
    }

    private static String written(JsonNode value, String symbol) {
        if (value.isArray()) {
            return value.valueStream().map(v -> written(v, symbol)).collect(Collectors.joining("; "));
        }
        if (!value.isNumber()) {
            return value.asString();
        }
        String number = symbol.equals("%")
                ? value.decimalValue().movePointRight(2).stripTrailingZeros().toPlainString()
                : value.decimalValue().stripTrailingZeros().toPlainString();
        return (number + " " + symbol).strip();
    }
}
