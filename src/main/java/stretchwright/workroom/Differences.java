package stretchwright.workroom;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.intake.Tree;

/** What stands differently in two texts of the make file's format, key by key. */
public final class Differences {
    private Differences() {}

    /** One line for each key; none where both say the same, however they are written. */
    public static List<Said> between(String before, String after) {
        Map<String, String> one = flat(before);
        Map<String, String> other = flat(after);
        Set<String> keys = new LinkedHashSet<>(one.keySet());
        keys.addAll(other.keySet());
        List<Said> out = new ArrayList<>();
        for (String key : keys) {
            String was = one.getOrDefault(key, "");
            String is = other.getOrDefault(key, "");
            if (!was.equals(is)) {
                out.add(
                        was.isEmpty()
                                ? Tell.said("differs.new", Part.text(key), Tell.quoted(is))
                                : is.isEmpty()
                                        ? Tell.said("differs.gone", Part.text(key), Tell.quoted(was))
                                        : Tell.said("differs", Part.text(key), Tell.quoted(was), Tell.quoted(is)));
            }
        }
        return out;
    }

    private static Map<String, String> flat(String text) {
        Map<String, String> out = new LinkedHashMap<>();
        put(Parts.tree(text), "", out);
        return out;
    }

    private static void put(Tree tree, String path, Map<String, String> out) {
        if (tree instanceof Tree.Keys keys) {
            keys.entries().forEach((name, value) -> put(value, path.isEmpty() ? name : path + "." + name, out));
        } else if (tree instanceof Tree.Items list) {
            for (int i = 0; i < list.items().size(); i++) {
                put(list.items().get(i), path + "." + (i + 1), out);
            }
        } else {
            out.put(path, ((Tree.Text) tree).text().strip());
        }
    }
}
