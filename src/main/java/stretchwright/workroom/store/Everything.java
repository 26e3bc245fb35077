package stretchwright.workroom.store;

import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.mapper.RowMapper;

/** All rows of a store at one moment, in an order that does not depend on the database. */
public final class Everything {
    private final Handle h;

    private Everything(Handle h) {
        this.h = h;
    }

    /** Read in one transaction. */
    public static void of(Store store, Consumer<Everything> work) {
        store.database().read(h -> {
            work.accept(new Everything(h));
            return true;
        });
    }

    /** Everything that is there is taken away, and what the work puts in stands instead: all of it or nothing. */
    public static void replace(Store store, Consumer<Everything> work) {
        store.database().write(h -> {
            for (String table : new String[] {"change", "step", "version", "thing"}) {
                h.execute("DELETE FROM " + table);
            }
            work.accept(new Everything(h));
            return true;
        });
    }

    public long count(String table) {
        return h.createQuery("SELECT count(*) FROM " + table).mapTo(long.class).one();
    }

    public void things(Consumer<Thing> to) {
        each("SELECT * FROM thing ORDER BY id", (row, context) -> Rows.thing(row), to);
    }

    public void versions(Consumer<Version> to) {
        each("SELECT * FROM version ORDER BY thing, number", (row, context) -> Rows.version(row), to);
    }

    public void steps(Consumer<Step> to) {
        each("SELECT * FROM step ORDER BY number", (row, context) -> Rows.step(row), to);
    }

    public void changes(Consumer<Change> to) {
        each("SELECT * FROM change ORDER BY step, part", (row, context) -> Rows.change(row), to);
    }

    private <T> void each(String sql, RowMapper<T> mapper, Consumer<T> to) {
        try (Stream<T> rows = h.createQuery(sql).setFetchSize(200).map(mapper).stream()) {
            rows.forEach(to);
        }
    }

    /** A row that does not go together with the rows before it. */
    public static final class Misfit extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Misfit(RuntimeException cause) {
            super(cause);
        }
    }

    public void put(Thing thing) {
        fitting(() -> Rows.insert(h, thing));
    }

    public void put(Version version) {
        fitting(() -> Rows.insert(h, version));
    }

    public void put(Step step) {
        fitting(() -> Rows.insert(h, step));
    }

    public void put(Change change) {
        fitting(() -> Rows.insert(h, change));
    }

    private static void fitting(Runnable insert) {
        try {
            insert.run();
        } catch (JdbiException e) {
            throw Trouble.isMisfit(e) ? new Misfit(e) : e;
        }
    }

    /** Whether it is what a store may hold. */
    public boolean isWhole() {
        return Soundness.holds(h);
    }
}
