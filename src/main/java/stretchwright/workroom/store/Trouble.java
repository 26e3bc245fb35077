package stretchwright.workroom.store;

import java.sql.SQLException;
import java.util.Optional;
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
        return cause(e).flatMap(Trouble::said)
                .map(s -> (RuntimeException) finding(at, s))
                .orElse(e);
    }

    /** Whether a row was refused because of the rows that are there. */
    static boolean isMisfit(RuntimeException e) {
        return cause(e)
                .filter(sql -> sql instanceof SQLiteException file
                        ? (file.getResultCode().code & 0xFF) == 19
                        : String.valueOf(sql.getSQLState()).startsWith("23"))
                .isPresent();
    }

    static BadInput finding(Address at, Told told) {
        Findings findings = new Findings(at.told());
        findings.add(KEY, told.wrong(), told.right());
        return new BadInput(findings.all());
    }

    record Told(Said wrong, Said right) {}

    private static Optional<SQLException> cause(Throwable e) {
        for (Throwable t = e; t != null; t = t.getCause()) {
            if (t instanceof SQLException sql && (sql instanceof SQLiteException || sql.getSQLState() != null)) {
                return Optional.of(sql);
            }
        }
        return Optional.empty();
    }

    private static Optional<Told> said(SQLException e) {
        return e instanceof SQLiteException file ? ofFile(file) : ofServer(String.valueOf(e.getSQLState()));
    }

    private static Optional<Told> ofFile(SQLiteException e) {
        return Optional.ofNullable(
                switch (e.getResultCode().code & 0xFF) {
                    case 13 -> new Told(Tell.said("store.full"), Tell.said("store.full-help"));
                    case 8, 3, 23 -> new Told(Tell.said("store.read-only"), Tell.said("store.read-only-help"));
                    case 11, 26 -> damaged();
                    case 5, 6 -> new Told(Tell.said("store.busy"), Tell.said("store.busy-help"));
                    case 14 -> new Told(Tell.said("store.cannot-open"), Tell.said("store.cannot-open-help"));
                    case 10 -> new Told(Tell.said("store.disk"), Tell.said("store.disk-help"));
                    default -> null;
                });
    }

    static Told damaged() {
        return new Told(Tell.said("store.damaged"), Tell.said("store.damaged-help"));
    }

    /** Classes of SQLSTATE (PostgreSQL's manual, appendix A). */
    private static Optional<Told> ofServer(String state) {
        Said help = Tell.said("store.server-help");
        return Optional.ofNullable(
                switch (state.length() < 2 ? state : state.substring(0, 2)) {
                    case "08", "57" -> new Told(Tell.said("store.no-server"), help);
                    case "28" -> new Told(Tell.said("store.not-let-in"), help);
                    case "3D" -> new Told(Tell.said("store.no-database"), help);
                    case "53" -> new Told(Tell.said("store.full"), Tell.said("store.full-help"));
                    case "25" -> new Told(Tell.said("store.read-only"), Tell.said("store.read-only-help"));
                    case "42" ->
                        state.equals("42501")
                                ? new Told(Tell.said("store.read-only"), Tell.said("store.read-only-help"))
                                : null;
                    case "XX", "58" -> damaged();
                    default -> null;
                });
    }
}
