package stretchwright.workroom.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.SqlStatement;

/** Rows of the four tables as values, and back. */
public final class Rows {
    private Rows() {}

    static Thing thing(ResultSet row) throws SQLException {
        return new Thing(
                text(row, "id"),
                Kind.of(text(row, "kind")).orElseThrow(() -> new Torn("kind")),
                text(row, "name"),
                row.getLong("now"),
                place(row.getInt("place")),
                links(row),
                row.getLong("changed"));
    }

    static Version version(ResultSet row) throws SQLException {
        Version version = new Version(
                text(row, "thing"),
                row.getLong("number"),
                text(row, "name"),
                text(row, "text"),
                links(row),
                Optional.ofNullable(row.getString("figures")),
                text(row, "program"),
                row.getLong("at"));
        if (version.seal() != row.getLong("seal")) {
            throw new Torn("seal");
        }
        return version;
    }

    private static String text(ResultSet row, String column) throws SQLException {
        String text = row.getString(column);
        if (text == null) {
            throw new Torn(column);
        }
        return text;
    }

    private static Place place(int number) {
        if (number < 0 || number >= Place.values().length) {
            throw new Torn("place");
        }
        return Place.of(number);
    }

    private static Step.State state(int number) {
        if (number < 0 || number >= Step.State.values().length) {
            throw new Torn("state");
        }
        return Step.State.values()[number];
    }

    private static Links links(ResultSet row) throws SQLException {
        return new Links(
                text(row, "origin"), text(row, "wearer"), text(row, "fabric"), text(row, "boot"), text(row, "style"));
    }

    static Step step(ResultSet row) throws SQLException {
        return new Step(
                row.getLong("number"),
                row.getLong("at"),
                text(row, "what"),
                text(row, "about"),
                state(row.getInt("state")));
    }

    static Change change(ResultSet row) throws SQLException {
        return new Change(
                row.getLong("step"),
                row.getInt("part"),
                text(row, "thing"),
                row.getLong("was"),
                row.getLong("now"),
                place(row.getInt("was_at")),
                place(row.getInt("now_at")));
    }

    static Optional<Thing> thing(Handle h, String id) {
        return h.createQuery("SELECT * FROM thing WHERE id = :id")
                .bind("id", id)
                .map((row, context) -> thing(row))
                .findOne();
    }

    static Optional<Version> version(Handle h, String thing, long number) {
        return h.createQuery("SELECT * FROM version WHERE thing = :thing AND number = :number")
                .bind("thing", thing)
                .bind("number", number)
                .map((row, context) -> version(row))
                .findOne();
    }

    /** All of it that came in one step, in its order. */
    static List<Change> changes(Handle h, long step) {
        return h.createQuery("SELECT * FROM change WHERE step = :step ORDER BY part")
                .bind("step", step)
                .map((row, context) -> change(row))
                .list();
    }

    public static void insert(Handle h, Thing t) {
        bind(
                        h.createUpdate(
                                "INSERT INTO thing (id, kind, name, folded, now, place, origin, wearer, fabric, boot, style,"
                                        + " changed) VALUES (:id, :kind, :name, :folded, :now, :place, :origin, :wearer, :fabric, :boot,"
                                        + " :style, :changed)"),
                        t)
                .execute();
    }

    static void update(Handle h, Thing t) {
        bind(
                        h.createUpdate(
                                "UPDATE thing SET kind = :kind, name = :name, folded = :folded, now = :now, place = :place,"
                                        + " origin = :origin, wearer = :wearer, fabric = :fabric, boot = :boot, style = :style,"
                                        + " changed = :changed WHERE id = :id"),
                        t)
                .execute();
    }

    private static <S extends SqlStatement<S>> S bind(S sql, Thing t) {
        return links(sql, t.links())
                .bind("id", t.id())
                .bind("kind", t.kind().word())
                .bind("name", t.name())
                .bind("folded", Names.folded(t.name()))
                .bind("now", t.now())
                .bind("place", t.place().ordinal())
                .bind("changed", t.changed());
    }

    private static <S extends SqlStatement<S>> S links(S sql, Links l) {
        return sql.bind("origin", l.origin())
                .bind("wearer", l.wearer())
                .bind("fabric", l.fabric())
                .bind("boot", l.boot())
                .bind("style", l.style());
    }

    public static void insert(Handle h, Version v) {
        links(
                        h.createUpdate("INSERT INTO version (thing, number, name, text, origin, wearer, fabric, boot,"
                                + " style, figures, program, at, seal) VALUES (:thing, :number, :name, :text, :origin,"
                                + " :wearer, :fabric, :boot, :style, :figures, :program, :at, :seal)"),
                        v.links())
                .bind("thing", v.thing())
                .bind("number", v.number())
                .bind("name", v.name())
                .bind("text", v.text())
                .bind("figures", v.figures().orElse(null))
                .bind("program", v.program())
                .bind("at", v.at())
                .bind("seal", v.seal())
                .execute();
    }

    static void figures(Handle h, Version v) {
        h.createUpdate("UPDATE version SET figures = :figures, program = :program, seal = :seal"
                        + " WHERE thing = :thing AND number = :number")
                .bind("figures", v.figures().orElse(null))
                .bind("program", v.program())
                .bind("seal", v.seal())
                .bind("thing", v.thing())
                .bind("number", v.number())
                .execute();
    }

    public static void insert(Handle h, Step s) {
        h.createUpdate("INSERT INTO step (number, at, what, about, state) VALUES (:number, :at, :what, :about, :state)")
                .bind("number", s.number())
                .bind("at", s.at())
                .bind("what", s.what())
                .bind("about", s.about())
                .bind("state", s.state().ordinal())
                .execute();
    }

    public static void insert(Handle h, Change c) {
        h.createUpdate("INSERT INTO change (step, part, thing, was, now, was_at, now_at) VALUES (:step, :part, :thing,"
                        + " :was, :now, :wasAt, :nowAt)")
                .bind("step", c.step())
                .bind("part", c.part())
                .bind("thing", c.thing())
                .bind("was", c.was())
                .bind("now", c.now())
                .bind("wasAt", c.wasAt().ordinal())
                .bind("nowAt", c.nowAt().ordinal())
                .execute();
    }
}
