package stretchwright.workroom.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HashSet;
import java.util.Set;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;

/** Brings a database to the version that this program knows, by the numbered files of workroom/schema; never back. */
final class Migration {
    /** The table in which what was run is written down. */
    static final String HISTORY = "flyway_schema_history";

    private Migration() {}

    static void run(DataSource source) {
        Flyway.configure()
                .dataSource(source)
                .locations("classpath:stretchwright/workroom/schema")
                .table(HISTORY)
                .load()
                .migrate();
    }

    /** The version of what is there; 0 where nothing is, and a finding where it is something else than a workroom. */
    static int found(Connection connection, Address at) throws SQLException {
        Set<String> tables = tables(connection);
        if (tables.isEmpty()) {
            return 0;
        }
        if (!tables.contains(HISTORY)) {
            throw Trouble.finding(at, new Trouble.Told(Tell.said("store.foreign"), Tell.said("store.foreign-help")));
        }
        try (Statement statement = connection.createStatement();
                ResultSet newest = statement.executeQuery(
                        "SELECT coalesce(max(CAST(version AS INTEGER)), 0) FROM " + HISTORY + " WHERE success")) {
            return newest.next() ? newest.getInt(1) : 0;
        }
    }

    /** In the schema that is written to; others on the same server are none of ours. */
    private static Set<String> tables(Connection connection) throws SQLException {
        Set<String> out = new HashSet<>();
        try (ResultSet found = connection
                .getMetaData()
                .getTables(null, connection.getSchema(), "%", new String[] {"TABLE", "PARTITIONED TABLE"})) {
            while (found.next()) {
                out.add(found.getString("TABLE_NAME"));
            }
        }
        return out;
    }
}
