package stretchwright.workroom.jobs;

import com.github.kagkarlsson.scheduler.jdbc.DefaultJdbcCustomization;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** How the library that shares the queue writes into any database: times as whole numbers, limits as both of ours read them. */
final class Millis extends DefaultJdbcCustomization {
    Millis() {
        super(true);
    }

    @Override
    public String getName() {
        return "milliseconds";
    }

    @Override
    public void setInstant(PreparedStatement statement, int index, @Nullable Instant value) throws SQLException {
        if (value == null) {
            statement.setNull(index, Types.BIGINT);
        } else {
            statement.setLong(index, value.toEpochMilli());
        }
    }

    @Override
    public @Nullable Instant getInstant(ResultSet row, String column) throws SQLException {
        long value = row.getLong(column);
        return row.wasNull() ? null : Instant.ofEpochMilli(value);
    }

    @Override
    public boolean supportsExplicitQueryLimitPart() {
        return true;
    }

    @Override
    public String getQueryLimitPart(int limit) {
        return " LIMIT " + limit;
    }
}
