package stretchwright.workroom.store;

import java.nio.file.Path;
import java.util.Optional;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import stretchwright.ground.BadInput;

/** Brings a database to the version that this program knows, by the numbered files of workroom/schema; never back. */
final class Migration {
    /** The table in which what was run is written down. */
    static final String HISTORY = "flyway_schema_history";

    private Migration() {}

    static void run(DataSource source, Optional<Path> lock) {
        Runnable work = () -> Flyway.configure()
                .dataSource(source)
                .locations("classpath:stretchwright/workroom/schema")
                .table(HISTORY)
                .load()
                .migrate();
        try {
            if (lock.isPresent()) {
                Database.locked(lock.get(), work);
            } else {
                work.run();
            }
        } catch (BadInput | FlywayException e) {
            throw e;
        }
    }
}
