package stretchwright.intake;

import java.util.ArrayList;
import java.util.List;

/** The table of keys of this program. */
public final class Table {
    private static final Keys ALL = of(rows());

    private Table() {}

    public static Keys keys() {
        return ALL;
    }

    /** The same with another row; what follows from a row, such as what may be changed after wearing, follows from it too. */
    static Keys with(Key<?> row) {
        return of(ALL.with(row).all());
    }

    private static Keys of(List<Key<?>> rows) {
        Keys plain = Keys.of(rows);
        return plain.with(WornKeys.history(rows));
    }

    private static List<Key<?>> rows() {
        List<Key<?>> rows = new ArrayList<>(List.of(FileKeys.VERSION, FileKeys.NAME, FileKeys.UNIT));
        rows.addAll(WearerKeys.rows());
        rows.addAll(FabricKeys.rows());
        rows.addAll(BootKeys.rows());
        rows.addAll(StyleKeys.rows());
        rows.add(FileKeys.MACHINES);
        rows.addAll(SewingKeys.rows());
        rows.addAll(PrintKeys.rows());
        rows.add(FileKeys.SEED);
        rows.addAll(FirstPairKeys.rows());
        rows.addAll(LearntKeys.rows());
        return rows;
    }
}
