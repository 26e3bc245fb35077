package stretchwright.sewing;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Stitch;

/**
 * What the sewer has said about the sewing.
 *
 * @param machines what there is to sew with; none means by hand
 * @param conversion minutes to convert one machine from overlock to coverstitch or back
 * @param cone metres of thread on a cone, for overlock and coverstitch
 * @param spool metres of thread on a spool, for lockstitch and hand
 * @param pairs how many pairs like this one, 1 to {@link SeveralPairs#MOST_PAIRS}
 * @param inWork how many of them may lie half done at a time, at least 1
 * @param extras steps of the sewer's own
 * @param kept settings that worked in this fabric, by stitch
 */
public record SewingTerms(
        Set<Machine> machines,
        double conversion,
        double cone,
        double spool,
        int pairs,
        int inWork,
        List<Extra> extras,
        Map<Stitch, Setting> kept) {
    /** Common practice, no source: a practised owner takes the knife out of work, rethreads and tests. */
    public static final double CONVERSION = 15;
    /** Lengths that are often sold, m; common practice, no source. */
    public static final double CONE = 1000;

    public static final double SPOOL = 200;
    /** Each step that may stand anywhere doubles the work of finding the order. */
    public static final int MOST_EXTRAS = 5;

    public SewingTerms {
        if (!(conversion >= 0 && cone > 0 && spool > 0) || inWork < 1 || extras.size() > MOST_EXTRAS) {
            throw new IllegalArgumentException("conversion " + conversion + ", cone " + cone + ", spool " + spool
                    + ", in work " + inWork + ", extras " + extras.size());
        }
        if (pairs < 1 || pairs > SeveralPairs.MOST_PAIRS) {
            throw new IllegalArgumentException(pairs + " pairs");
        }
        machines = Collections.unmodifiableSet(new LinkedHashSet<>(machines));
        extras = List.copyOf(extras);
        kept = Map.copyOf(kept);
    }

    /**
     * A step that the pattern does not ask for.
     *
     * @param name in the sewer's words
     * @param instruction in the sewer's words; empty where there is none
     * @param after words of steps that must come before it
     * @param before words of steps that must come after it
     */
    public record Extra(
            String name, Place place, double minutes, String instruction, List<String> after, List<String> before) {
        public Extra {
            after = List.copyOf(after);
            before = List.copyOf(before);
        }
    }

    /** One pair on these machines, all else as usual. */
    public static SewingTerms on(Set<Machine> machines) {
        return new SewingTerms(machines, CONVERSION, CONE, SPOOL, 1, 1, List.of(), Map.of());
    }

    /** The same on other machines. */
    public SewingTerms with(Set<Machine> other) {
        return new SewingTerms(other, conversion, cone, spool, pairs, inWork, extras, kept);
    }

    /** Tenths of a minute for one change of the sewing table, so that sums are exact. */
    int tenths(Bench.Change change) {
        return change.moves() * Bench.MOVE_TENTHS + change.conversions() * (int) Math.round(10 * conversion);
    }
}
