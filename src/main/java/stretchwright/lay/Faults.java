package stretchwright.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a check of a lay found, in its order. */
final class Faults {
    private final List<Fault> all = new ArrayList<>();

    /**
     * What does not hold.
     *
     * @param who the placements that it is about
     */
    record Fault(Trouble.Kind kind, List<Lay.Placement> who, String words) {
        Fault {
            who = List.copyOf(who);
        }
    }

    List<Fault> all() {
        return List.copyOf(all);
    }

    void add(String format, Object... values) {
        add(Trouble.Kind.OTHER, List.of(), format, values);
    }

    void add(Trouble.Kind kind, List<Lay.Placement> who, String format, Object... values) {
        all.add(new Fault(kind, who, String.format(Locale.ROOT, format, values)));
    }

    /** The words begin with the piece and the number of its copy. */
    void add(Trouble.Kind kind, Lay.Placement who, String format, Object... values) {
        List<Object> named = new ArrayList<>(List.of(who.piece(), who.copy()));
        named.addAll(List.of(values));
        add(kind, List.of(who), format, named.toArray());
    }
}
