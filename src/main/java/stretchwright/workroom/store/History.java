package stretchwright.workroom.store;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;

/**
 * Which version of a thing was made from which: the one that stood when it first came to stand. So they form a tree, and what was
 * kept aside is not in it.
 */
final class History {
    private final Map<Long, Long> from = new HashMap<>();
    /** All that ever stood, by when they last did. */
    private final Set<Long> stood = new LinkedHashSet<>();

    private History() {}

    static History of(Handle h, String thing) {
        History history = new History();
        h.createQuery("SELECT * FROM change WHERE thing = :thing ORDER BY step, part")
                .bind("thing", thing)
                .map((row, context) -> Rows.change(row))
                .forEach(history::add);
        return history;
    }

    private void add(Change c) {
        if (c.was() != c.now()) {
            from.putIfAbsent(c.now(), c.was());
        }
        for (long version : List.of(c.was(), c.now())) {
            stood.remove(version);
            stood.add(version);
        }
    }

    Optional<Long> earlier(long version) {
        return Optional.ofNullable(from.get(version)).filter(v -> v > 0);
    }

    /** That which stood last: who went back to the version before and forth again is where she was. */
    Optional<Long> later(long version) {
        List<Long> made = new ArrayList<>(stood);
        made.removeIf(v -> version == 0 || v == 0 || from.getOrDefault(v, 0L) != version);
        return made.isEmpty() ? Optional.empty() : Optional.of(made.get(made.size() - 1));
    }
}
