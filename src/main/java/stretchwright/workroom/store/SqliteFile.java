package stretchwright.workroom.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Properties;
import java.util.concurrent.TimeUnit;
import org.sqlite.BusyHandler;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteDataSource;

/**
 * Connections to a file that wait their turn patiently. SQLite's own way of waiting looks each tenth of a second whether the
 * file is free; beside a program that saves one thing after another that is as good as never.
 */
final class SqliteFile extends SQLiteDataSource {
    private static final long PAUSE = 2;

    private final int patience;

    SqliteFile(Address.Folder at, Properties settings, int patience) {
        super(new SQLiteConfig(settings));
        this.patience = patience;
        setUrl("jdbc:sqlite:" + at.file());
    }

    @Override
    public SQLiteConnection getConnection(String user, String password) throws SQLException {
        SQLiteConnection connection = super.getConnection(user, password);
        waitLong(connection, patience);
        return connection;
    }

    /** From now on, for so many ms. */
    static void waitLong(Connection connection, int millis) throws SQLException {
        BusyHandler.setHandler(connection.unwrap(SQLiteConnection.class), new Patience(millis));
    }

    private static final class Patience extends BusyHandler {
        private final long nanos;
        private long began;

        Patience(int millis) {
            this.nanos = TimeUnit.MILLISECONDS.toNanos(millis);
        }

        @Override
        protected int callback(int before) {
            if (before == 0) {
                began = System.nanoTime();
            }
            if (System.nanoTime() - began >= nanos) {
                return 0;
            }
            try {
                Thread.sleep(PAUSE);
                return 1;
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return 0;
            }
        }
    }
}
