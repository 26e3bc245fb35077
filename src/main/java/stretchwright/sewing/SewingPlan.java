package stretchwright.sewing;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import stretchwright.pattern.Stitch;

/**
 * The operations in the order of work.
 *
 * @param changeovers how often the work moves to another machine, or one machine is converted
 * @param minutes for a practised sewer, from cut pieces
 * @param threads the same, thread by thread
 * @param optimum why no order is better
 * @param firstPair minutes for someone who sews such a pair for the first time
 * @param thread metres per machine word, in the order of first use
 * @param several pairs sewn together; empty for one
 */
public record SewingPlan(
        List<Operation> operations,
        int changeovers,
        double minutes,
        double firstPair,
        Map<String, Double> thread,
        List<Thread> threads,
        Optimum optimum,
        Optional<SeveralPairs> several) {
    public SewingPlan {
        operations = List.copyOf(operations);
        threads = List.copyOf(threads);
        thread = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(thread));
    }

    /** The same with its operations in other words. */
    public SewingPlan with(List<Operation> worded) {
        return new SewingPlan(worded, changeovers, minutes, firstPair, thread, threads, optimum, several);
    }

    /**
     * One thread of a machine.
     *
     * @param position where it is threaded: "left needle", "upper looper", "bobbin"
     * @param metres waste included
     * @param length metres on one cone (overlock and cover machines) or spool
     * @param count cones or spools that takes; each position needs one of its own
     */
    public record Thread(String machine, String position, double metres, double length, int count) {
        static Thread of(String machine, String position, double metres, double length) {
            return new Thread(
                    machine, position, Math.round(metres * 10) / 10.0, length, (int) Math.ceil(metres / length));
        }
    }

    /**
     * What the order was held against: every order that keeps what must come before, by dynamic programming over the sets
     * of steps done. None of them takes less time.
     *
     * @param validOrders how many there are
     * @param conversions how often one machine is converted in this order
     * @param fewestConversions the least of any valid order
     * @param forcedBy names of steps that wait for each other and are sewn in turn in the two setups; empty where that does
     *     not force a conversion
     */
    public record Optimum(BigInteger validOrders, int conversions, int fewestConversions, List<String> forcedBy) {
        public Optimum {
            forcedBy = List.copyOf(forcedBy);
        }
    }

    /**
     * One thing to do.
     *
     * @param step 1, 2, ... in the order of work
     * @param machine the machine's word, or "hand", or "iron", or "table"
     * @param stitch empty where nothing is sewn
     * @param seam ISO 4916 number, empty where nothing is sewn
     * @param joins piece and edge names that meet, such as "leg: front inseam"
     * @param length sewn length in mm, all repetitions together
     * @param after steps that must be done before this one
     * @param instruction one or two sentences for the sewer
     * @param check what to look at before going on
     * @param help how the machine is set, what comes before and why, what goes wrong
     */
    public record Operation(
            int step,
            String name,
            String machine,
            Optional<Stitch> stitch,
            String seam,
            List<String> joins,
            double length,
            double minutes,
            List<Integer> after,
            String instruction,
            String check,
            Help help) {
        public Operation {
            joins = List.copyOf(joins);
            after = List.copyOf(after);
        }

        /** The same with every sentence put in other words. */
        public Operation worded(UnaryOperator<String> words) {
            return new Operation(
                    step,
                    name,
                    machine,
                    stitch,
                    seam,
                    joins,
                    length,
                    minutes,
                    after,
                    words.apply(instruction),
                    words.apply(check),
                    help.worded(words));
        }
    }

    /**
     * What helps at one step.
     *
     * @param setting empty where no machine sews
     * @param allowances mm, of the seams sewn; empty where nothing is sewn together
     * @param spread which side is stretched or eased, by how much, between which marks; empty where both are as long
     * @param why for each step that must be done before: its number and the reason
     * @param demand what the worst pose asks of the seam; empty where nothing was computed
     * @param mistake what often goes wrong here, and how it is seen; empty where nothing is known
     * @param undo how to put that right
     */
    public record Help(
            Optional<Setting> setting,
            List<Double> allowances,
            String spread,
            List<Reason> why,
            Optional<Demand> demand,
            String mistake,
            String undo) {
        /** Nothing to say. */
        public static final Help NONE = new Help(Optional.empty(), List.of(), "", List.of(), Optional.empty(), "", "");

        public Help {
            allowances = List.copyOf(allowances);
            why = List.copyOf(why);
        }

        Help worded(UnaryOperator<String> words) {
            return new Help(
                    setting,
                    allowances,
                    words.apply(spread),
                    why.stream()
                            .map(r -> new Reason(r.step, words.apply(r.because)))
                            .toList(),
                    demand,
                    words.apply(mistake),
                    words.apply(undo));
        }
    }

    /** @param step that must be done before */
    public record Reason(int step, String because) {}

    /**
     * What a seam is drawn by in the worst pose, from the fit check; shares, not percent.
     *
     * @param stands at which the stitch breaks
     */
    public record Demand(String pose, double needed, double stands) {
        public boolean breaks() {
            return needed > stands;
        }
    }
}
