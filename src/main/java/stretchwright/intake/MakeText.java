package stretchwright.intake;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** A tree of maps, lists and texts as YAML 1.2. Plain numbers and words stay bare, all else is double-quoted. */
public final class MakeText {
    private MakeText() {}

    public static String of(Map<String, Object> file) {
        StringBuilder out = new StringBuilder();
        section(file, "", out);
        return out.toString();
    }

    /** The same of what was read: remarks and the way it was written are gone, the meaning is not. */
    public static String of(Tree.Keys file) {
        return of(plain(file));
    }

    private static Map<String, Object> plain(Tree.Keys keys) {
        Map<String, Object> out = new LinkedHashMap<>();
        keys.entries().forEach((name, tree) -> out.put(name, plain(tree)));
        return out;
    }

    private static Object plain(Tree tree) {
        if (tree instanceof Tree.Keys keys) {
            return plain(keys);
        }
        return tree instanceof Tree.Items list
                ? list.items().stream().map(MakeText::plain).toList()
                : ((Tree.Text) tree).text();
    }

    private static void section(Map<?, ?> section, String indent, StringBuilder out) {
        section.forEach((key, value) -> {
            out.append(indent).append(key).append(':');
            if (value instanceof Map<?, ?> inside && !inside.isEmpty()) {
                out.append('\n');
                section(inside, indent + "  ", out);
            } else {
                out.append(' ').append(flow(value)).append('\n');
            }
        });
    }

    private static String flow(Object value) {
        if (value instanceof Map<?, ?> section) {
            return section.entrySet().stream()
                    .map(e -> e.getKey() + ": " + flow(e.getValue()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (value instanceof List<?> items) {
            return items.stream().map(MakeText::flow).collect(Collectors.joining(", ", "[", "]"));
        }
        String text = value.toString();
        return text.matches("[0-9]{1,9}(\\.[0-9]{1,9})?|true|false") ? text : quoted(text);
    }

    /** YAML 1.2 section 5.7: what is not a plain printable character is written by its number. */
    private static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            int type = Character.getType(c);
            boolean hidden = Character.isISOControl(c)
                    || type == Character.FORMAT
                    || type == Character.SURROGATE
                    || type == Character.LINE_SEPARATOR
                    || type == Character.PARAGRAPH_SEPARATOR
                    || type == Character.UNASSIGNED
                    || type == Character.PRIVATE_USE;
            if (c == '"' || c == '\\') {
                out.append('\\').appendCodePoint(c);
            } else if (hidden) {
                out.append(String.format(Locale.ROOT, c > 0xFFFF ? "\\U%08X" : "\\u%04X", c));
            } else {
                out.appendCodePoint(c);
            }
        });
        return out.append('"').toString();
    }
}
