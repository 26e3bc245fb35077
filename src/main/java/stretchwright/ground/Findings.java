package stretchwright.ground;

import java.util.ArrayList;
import java.util.List;

/** Collects findings of one file while it is being read, so that all are reported at once. */
public final class Findings {
    private final String file;
    private final List<Finding> all = new ArrayList<>();

    public Findings(String file) {
        this.file = file;
    }

    public void add(String key, String problem, String remedy) {
        all.add(new Finding(file, key, problem, remedy));
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
