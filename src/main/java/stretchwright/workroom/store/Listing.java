package stretchwright.workroom.store;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/** How things are found. */
final class Listing {
    private Listing() {}

    static List<Thing> of(Handle h, Kind kind, Place place, String sought, int from, int most) {
        List<String> words = Names.words(sought);
        StringBuilder sql = new StringBuilder("SELECT t.* FROM thing t WHERE t.kind = :kind AND t.place = :place");
        for (int i = 0; i < words.size(); i++) {
            String like = "folded LIKE :word" + i + " ESCAPE '!'";
            sql.append(" AND (t.").append(like);
            for (String link : List.of("wearer", "fabric")) {
                // looked for once, not for each thing
                sql.append(" OR t.").append(link).append(" IN (SELECT id FROM thing WHERE kind = '");
                sql.append(link).append("' AND ").append(like).append(')');
            }
            sql.append(')');
        }
        sql.append(" ORDER BY t.changed DESC, t.id LIMIT :most OFFSET :from");
        Query query = h.createQuery(sql.toString())
                .bind("kind", kind.word())
                .bind("place", place.ordinal())
                .bind("most", most)
                .bind("from", from);
        for (int i = 0; i < words.size(); i++) {
            query.bind("word" + i, Names.anywhere(words.get(i)));
        }
        return query.map((row, context) -> Rows.thing(row)).list();
    }

    static Optional<Thing> named(Handle h, Kind kind, String name) {
        return h.createQuery("SELECT * FROM thing WHERE kind = :kind AND folded = :folded AND place = 0")
                .bind("kind", kind.word())
                .bind("folded", Names.folded(name))
                .map((row, context) -> Rows.thing(row))
                .findFirst();
    }

    static List<Thing> ending(Handle h, Kind kind, String name) {
        String end = Names.folded(name);
        return h.createQuery("SELECT * FROM thing WHERE kind = :kind AND folded LIKE :any ESCAPE '!'")
                .bind("kind", kind.word())
                .bind("any", Names.anywhere(end))
                .map((row, context) -> Rows.thing(row))
                .filter(t -> Names.folded(t.name()).endsWith(end))
                .list();
    }

    static List<Thing> saying(Handle h, String letters, int most) {
        return h.createQuery("SELECT * FROM thing t WHERE EXISTS (SELECT 1 FROM version v WHERE"
                        + " v.thing = t.id AND (lower(v.name) LIKE :any ESCAPE '!' OR lower(v.text) LIKE :any ESCAPE '!'))"
                        + " ORDER BY t.kind, t.name, t.id LIMIT :most")
                .bind("any", Names.anywhere(Names.folded(letters)))
                .bind("most", most)
                .map((row, context) -> Rows.thing(row))
                .list();
    }

    static List<Thing> everyOfWearer(Handle h, String wearer) {
        return h.createQuery("SELECT * FROM thing WHERE wearer = :id OR id IN"
                        + " (SELECT thing FROM version WHERE wearer = :id)")
                .bind("id", wearer)
                .map((row, context) -> Rows.thing(row))
                .list();
    }

    static List<String> used(Handle h, String wearer) {
        return h.createQuery("SELECT boot FROM version WHERE wearer = :id AND boot <> ''"
                        + " UNION SELECT style FROM version WHERE wearer = :id AND style <> ''")
                .bind("id", wearer)
                .mapTo(String.class)
                .list();
    }
}
