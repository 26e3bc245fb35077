package stretchwright.pattern;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stretchwright.ground.Said;

/** What the sewer owns. */
public enum Machine {
    OVERLOCKER("overlocker", Tell.said("machine.overlocker"), Stitch.OVERLOCK_4, Stitch.OVERLOCK_3),
    COVERSTITCH("coverstitch", Tell.said("machine.coverstitch"), Stitch.COVERSTITCH, Stitch.CHAINSTITCH),
    COMBINED(
            "combined overlocker and coverstitch",
            Tell.said("machine.combined"),
            Stitch.OVERLOCK_4,
            Stitch.OVERLOCK_3,
            Stitch.COVERSTITCH,
            Stitch.CHAINSTITCH),
    LOCKSTITCH("lockstitch with zigzag", Tell.said("machine.lockstitch"), Stitch.LOCKSTITCH, Stitch.ZIGZAG),
    HAND("hand", Tell.said("machine.hand"), Stitch.BACKSTITCH_BY_HAND);

    private final String word;
    private final Said said;
    private final List<Stitch> stitches;

    Machine(String word, Said said, Stitch... stitches) {
        this.word = word;
        this.said = said;
        this.stitches = List.of(stitches);
    }

    /** As written in the make file. */
    public String word() {
        return word;
    }

    public Said said() {
        return said;
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
