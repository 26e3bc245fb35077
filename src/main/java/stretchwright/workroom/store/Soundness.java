package stretchwright.workroom.store;

import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.result.ResultIterable;

/** What holds in every store that is whole, whichever database keeps it. */
final class Soundness {
    private static final int AT_ONCE = 200;

    /** Each counts what must not be. */
    private static final List<String> NEVER = List.of(
            "SELECT count(*) FROM thing t WHERE (t.now > 0 OR t.place <> 2) AND NOT EXISTS"
                    + " (SELECT 1 FROM version v WHERE v.thing = t.id AND v.number = t.now AND v.name = t.name)",
            "SELECT count(*) FROM version v WHERE NOT EXISTS (SELECT 1 FROM thing t WHERE t.id = v.thing)",
            "SELECT count(*) FROM change c WHERE NOT EXISTS (SELECT 1 FROM step s WHERE s.number = c.step)",
            "SELECT count(*) FROM change c WHERE NOT EXISTS (SELECT 1 FROM thing t WHERE t.id = c.thing)",
            "SELECT count(*) FROM step s WHERE NOT EXISTS (SELECT 1 FROM change c WHERE c.step = s.number)",
            "SELECT count(*) FROM change c WHERE c.now > 0 AND NOT EXISTS"
                    + " (SELECT 1 FROM version v WHERE v.thing = c.thing AND v.number = c.now)",
            "SELECT count(*) FROM step d WHERE d.state = 0 AND d.number >"
                    + " (SELECT min(u.number) FROM step u WHERE u.state = 1)",
            // a thing stands as the last step that is done left it
            "SELECT count(*) FROM thing t JOIN change c ON c.thing = t.id JOIN step s ON s.number = c.step"
                    + " WHERE s.state = 0 AND (c.now <> t.now OR c.now_at <> t.place) AND NOT EXISTS"
                    + " (SELECT 1 FROM change d JOIN step e ON e.number = d.step WHERE d.thing = t.id AND e.state = 0"
                    + " AND (d.step > c.step OR (d.step = c.step AND d.part > c.part)))");

    private Soundness() {}

    static boolean holds(Handle h) {
        for (String sql : NEVER) {
            if (h.createQuery(sql).mapTo(long.class).one() != 0) {
                return false;
            }
        }
        return things(h) && versions(h) && rest(h);
    }

    private static boolean things(Handle h) {
        return all(h.createQuery("SELECT * FROM thing")
                .setFetchSize(AT_ONCE)
                .map((row, context) -> row.getString("folded")
                        .equals(Names.folded(Rows.thing(row).name()))));
    }

    /** Each is read; one that is not as it was written says so itself. */
    private static boolean versions(Handle h) {
        return all(h.createQuery("SELECT * FROM version")
                .setFetchSize(AT_ONCE)
                .map((row, context) -> Rows.version(row).number() > 0));
    }

    private static boolean rest(Handle h) {
        return all(h.createQuery("SELECT * FROM step")
                        .setFetchSize(AT_ONCE)
                        .map((row, context) -> Rows.step(row).number() > 0))
                && all(h.createQuery("SELECT * FROM change")
                        .setFetchSize(AT_ONCE)
                        .map((row, context) -> Rows.change(row).step() > 0));
    }

    private static boolean all(ResultIterable<Boolean> rows) {
        try (Stream<Boolean> each = rows.stream()) {
            Iterator<Boolean> next = each.iterator();
            while (next.hasNext()) {
                if (!next.next()) {
                    return false;
                }
            }
            return true;
        }
    }
}
