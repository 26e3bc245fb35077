package stretchwright.pattern;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What the sewer owns. */
public enum Machine {
    OVERLOCKER("overlocker", Stitch.OVERLOCK_4, Stitch.OVERLOCK_3),
    COVERSTITCH("coverstitch", Stitch.COVERSTITCH, Stitch.CHAINSTITCH),
    COMBINED(
            "combined overlocker and coverstitch",
            Stitch.OVERLOCK_4,
            Stitch.OVERLOCK_3,
            Stitch.COVERSTITCH,
            Stitch.CHAINSTITCH),
    LOCKSTITCH("lockstitch with zigzag", Stitch.LOCKSTITCH, Stitch.ZIGZAG),
    HAND("hand", Stitch.BACKSTITCH_BY_HAND);

    private final String word;
    private final List<Stitch> stitches;

    Machine(String word, Stitch... stitches) {
        this.word = word;
        this.stitches = List.of(stitches);
    }

    /** As written in the make file. */
    public String word() {
        return word;
    }

    public List<Stitch> stitches() {
        return stitches;
    }

    public static Optional<Machine> of(String word) {
        return Arrays.stream(values()).filter(m -> m.word.equals(word)).findFirst();
    }

    /** The first stitch of the wish list that one of the machines can sew; by hand if none can. */
    public static Stitch best(Set<Machine> owned, Stitch... wishes) {
        for (Stitch wish : wishes) {
            if (owned.stream().anyMatch(m -> m.stitches.contains(wish))) {
                return wish;
            }
        }
        return Stitch.BACKSTITCH_BY_HAND;
    }

    /** The stitch for a seam that must stretch: overlock, else zigzag, else chainstitch. */
    public static Stitch forSeam(Set<Machine> owned) {
        return best(owned, Stitch.OVERLOCK_4, Stitch.ZIGZAG, Stitch.CHAINSTITCH);
    }

    /** The stitch for a hem or a row on top of a seam: coverstitch, else zigzag, else chainstitch. */
    public static Stitch forHem(Set<Machine> owned) {
        return best(owned, Stitch.COVERSTITCH, Stitch.ZIGZAG, Stitch.CHAINSTITCH);
    }
}
