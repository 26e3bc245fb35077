package stretchwright.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stretchwright.ground.Said;

/** What a make file is made of, before anything is known about its meaning: texts, lists and keyed sections. */
public sealed interface Tree {
    /** Line in the file, from 1. */
    int line();

    /** What to call it in a finding. */
    Said said();

    /** A single value, still as written; whether it is a number, a length or a word is decided by whoever asks. */
    record Text(String text, int line) implements Tree {
        @Override
        public Said said() {
            return Tell.said("tree.text");
        }
    }

    record Items(List<Tree> items, int line) implements Tree {
        public Items {
            items = List.copyOf(items);
        }

        @Override
        public Said said() {
            return Tell.said("tree.list");
        }
    }

    /** Keys in the order of the file. */
    public record Keys(Map<String, Tree> entries, int line) implements Tree {
        public Keys {
            entries = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }

        @Override
        public Said said() {
            return Tell.said("tree.section");
        }

        public List<String> names() {
            return new ArrayList<>(entries.keySet());
        }
    }
}
