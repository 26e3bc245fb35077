package stretchwright.workroom.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.util.Optional;
import org.flywaydb.core.api.FlywayException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Said;

/** What a database says that it cannot do, in words that help. */
final class Trouble {
    private static final String KEY = "--workroom";

    private Trouble() {}

    /** The same as a finding about the workroom where the world outside is at fault; otherwise as it was. */
    static RuntimeException of(RuntimeException e, Address at) {
        return said(e).map(s -> (RuntimeException) finding(at, s)).orElse(e);
    }

    /** What went wrong as a transaction ended: where its answer was lost, nobody knows whether it stands. */
    static RuntimeException atEnd(RuntimeException e, Address at) {
        return said(e).map(s -> (RuntimeException) finding(at, isLoss(s) ? unsure() : s))
                .orElse(e);
    }

    /** Whether a row was refused because of the rows that are there. */
    static boolean isMisfit(Throwable e) {
        for (Throwable t = e; t != null; t = t.getCause()) {
            if (t instanceof SQLException sql) {
                return sql instanceof SQLiteException file
                        ? (file.getResultCode().code & 0xFF) == 19
                        : String.valueOf(sql.getSQLState()).startsWith("23");
            }
        }
        return false;
    }

    private static boolean isLoss(Told told) {
        return told.wrong().sameKey(Tell.said("store.no-server"))
                || told.wrong().sameKey(Tell.said("store.disk"));
    }

    static BadInput finding(Address at, Told told) {
        Findings findings = new Findings(at.told());
        findings.add(KEY, told.wrong(), told.right());
        return new BadInput(findings.all());
    }

    record Told(Said wrong, Said right) {}

    private static Optional<Told> said(Throwable e) {
        if (e instanceof BadInput) {
            return Optional.empty();
        }
        for (Throwable t = e; t != null; t = t.getCause()) {
            Optional<Told> told = t instanceof SQLException sql ? said(sql) : Optional.empty();
            if (told.isPresent()) {
                return told;
            }
            if (t instanceof Torn) {
                return Optional.of(damaged());
            }
        }
        return e instanceof FlywayException ? Optional.of(damaged()) : Optional.empty();
    }

    private static Optional<Told> said(SQLException e) {
        if (e instanceof SQLiteException file) {
            return ofFile(file);
        }
        if (e.getSQLState() == null) {
            // all connections are in use, each waiting for its turn
            return e instanceof SQLTransientConnectionException && e.getCause() == null
                    ? Optional.of(busy())
                    : Optional.empty();
        }
        return ofServer(e.getSQLState());
    }

    private static Optional<Told> ofFile(SQLiteException e) {
        if (e.getResultCode() == SQLiteErrorCode.SQLITE_IOERR_SHMSIZE) {
            return Optional.of(full());
        }
        return Optional.ofNullable(
                switch (e.getResultCode().code & 0xFF) {
                    case 13 -> full();
                    case 8, 3, 23 -> readOnly();
                    case 11, 26 -> damaged();
                    // what the program's own words are about is not there: they are the same in every workroom
                    case 1 -> String.valueOf(e.getMessage()).contains("no such") ? damaged() : null;
                    case 5, 6, 15 -> busy();
                    case 14 -> new Told(Tell.said("store.cannot-open"), Tell.said("store.cannot-open-help"));
                    case 10 -> disk();
                    // each is looked at before it is written: what breaks a rule of the schema was there before
                    case 19 -> damaged();
                    default -> null;
                });
    }

    /** What a folder or a plain file says. */
    static Told ofDisk(IOException e) {
        String said = String.valueOf(e.getMessage());
        if (said.contains("No space left")) {
            return full();
        }
        return e instanceof AccessDeniedException || said.contains("Read-only")
                ? readOnly()
                : new Told(Tell.said("store.cannot-open"), Tell.said("store.cannot-open-help"));
    }

    static Told damaged() {
        return new Told(Tell.said("store.damaged"), Tell.said("store.damaged-help"));
    }

    static Told busy() {
        return new Told(Tell.said("store.busy"), Tell.said("store.busy-help"));
    }

    private static Told full() {
        return new Told(Tell.said("store.full"), Tell.said("store.full-help"));
    }

    private static Told readOnly() {
        return new Told(Tell.said("store.read-only"), Tell.said("store.read-only-help"));
    }

    private static Told disk() {
        return new Told(Tell.said("store.disk"), Tell.said("store.disk-help"));
    }

    private static Told unsure() {
        return new Told(Tell.said("store.unsure"), Tell.said("store.unsure-help"));
    }

    /** Classes of SQLSTATE (PostgreSQL's manual, appendix A), and single ones that are told otherwise. */
    private static Optional<Told> ofServer(String state) {
        Optional<Told> one = Optional.ofNullable(
                switch (state) {
                    case "53100" -> full();
                    case "42501" -> readOnly();
                    case "42P01", "42703", "XX001", "XX002" -> damaged();
                    case "55P03", "40001", "40P01" -> busy();
                    default -> null;
                });
        return one.or(() -> ofClass(state.length() < 2 ? state : state.substring(0, 2)));
    }

    private static Optional<Told> ofClass(String state) {
        Said help = Tell.said("store.server-help");
        return Optional.ofNullable(
                switch (state) {
                    case "08", "57" -> new Told(Tell.said("store.no-server"), help);
                    case "53" -> new Told(Tell.said("store.server-full"), help);
                    case "28" -> new Told(Tell.said("store.not-let-in"), help);
                    case "3D" -> new Told(Tell.said("store.no-database"), help);
                    case "25" -> readOnly();
                    case "XX", "58" -> disk();
                    case "23" -> damaged();
                    default -> null;
                });
    }
}
