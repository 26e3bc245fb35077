package stretchwright.ground;

import java.util.ArrayList;
import java.util.List;

/** Collects findings of one file while it is being read, so that all are reported at once. */
public final class Findings {
    private final String file;
    private final Unit unit;
    private final List<Finding> all = new ArrayList<>();

    /** Told in millimetres. */
    public Findings(String file) {
        this(file, Unit.MM);
    }

    /** @param unit in which lengths are told */
    public Findings(String file, Unit unit) {
        this.file = file;
        this.unit = unit;
    }

    /** Of the same file, with lengths told in another unit; they are not added here. */
    public Findings in(Unit other) {
        return new Findings(file, other);
    }

    /** In which lengths are told: the one they were written in. */
    public Unit unit() {
        return unit;
    }

    public void add(String key, Said problem, Said remedy) {
        at(key, 0, problem, remedy);
    }

    /** @param row line of the file, from 1; 0 where it is not known */
    public void at(String key, int row, Said problem, Said remedy) {
        all.add(new Finding(file, key, row, problem, remedy, unit));
    }

    /** Those of another collection, as they are. */
    public void addAll(List<Finding> others) {
        all.addAll(others);
    }

    public boolean isEmpty() {
        return all.isEmpty();
    }

    public List<Finding> all() {
        return List.copyOf(all);
    }

    /** Returns if there is none; throws all of them otherwise. */
    public void throwIfAny() {
        if (!all.isEmpty()) {
            throw new BadInput(all);
        }
    }
}
