package stretchwright.sewing;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Stitch;

/**
 * The operations in the order of work.
 *
 * @param changeovers how often the work moves to another machine, or one machine is converted
 * @param minutes for a practised sewer, from cut pieces
 * @param threads the same, thread by thread
 * @param optimum why no order is better
 * @param firstPair minutes for someone who sews such a pair for the first time
 * @param thread metres per machine, in the order of first use
 * @param several pairs sewn together; empty for one
 */
public record SewingPlan(
        List<Operation> operations,
        int changeovers,
        double minutes,
        double firstPair,
        Map<Place, Double> thread,
        List<Thread> threads,
        Optimum optimum,
        Optional<SeveralPairs> several) {
    public SewingPlan {
        operations = List.copyOf(operations);
        threads = List.copyOf(threads);
        thread = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(thread));
    }

    /**
     * Numbers of the steps before which the sewer sits down at another machine or converts the combined one; the first machine is
     * among them, for it is set up too. Hand, table and iron are within reach.
     */
    public List<Integer> setUps() {
        List<Integer> steps = new ArrayList<>();
        Bench bench = Bench.BEGIN;
        for (Operation o : operations) {
            Bench.Change change = bench.to(o.stitch()
                    .flatMap(s -> Machine.of(o.place().word()).map(machine -> new Tool(machine, s))));
            boolean first = bench.at().isEmpty() && change.then().at().isPresent();
            if (first || change.count() > 0) {
                steps.add(o.step());
            }
            bench = change.then();
        }
        return List.copyOf(steps);
    }

    /**
     * One thread of a machine.
     *
     * @param metres waste included
     * @param length metres on one cone (overlock and cover machines) or spool
     * @param count cones or spools that takes; each position needs one of its own
     */
    public record Thread(Place machine, Threading position, double metres, double length, int count) {
        static Thread of(Place machine, Threading position, double metres, double length) {
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
     * @param forcedBy steps that wait for each other and are sewn in turn in the two setups; empty where that does
     *     not force a conversion
     */
    public record Optimum(BigInteger validOrders, int conversions, int fewestConversions, List<StepName> forcedBy) {
        public Optimum {
            forcedBy = List.copyOf(forcedBy);
        }
    }

    /**
     * One thing to do.
     *
     * @param step 1, 2, ... in the order of work
     * @param stitch empty where nothing is sewn
     * @param seam ISO 4916 number, empty where nothing is sewn
     * @param joins edges that meet
     * @param length sewn length in mm, all repetitions together
     * @param after steps that must be done before this one
     * @param instruction one or two sentences for the sewer
     * @param check what to look at before going on
     * @param help how the machine is set, what comes before and why, what goes wrong
     */
    public record Operation(
            int step,
            StepName name,
            Place place,
            Optional<Stitch> stitch,
            String seam,
            List<Joined> joins,
            double length,
            double minutes,
            List<Integer> after,
            Said instruction,
            Said check,
            Help help) {
        public Operation {
            joins = List.copyOf(joins);
            after = List.copyOf(after);
        }
    }

    /**
     * What helps at one step.
     *
     * @param setting empty where no machine sews
     * @param allowances mm, of the seams sewn; empty where nothing is sewn together
     * @param spread for each seam whose sides differ: which is stretched or eased, by how much, between which marks
     * @param why for each step that must be done before: its number and the reason
     * @param demand what the worst pose asks of the seam; empty where nothing was computed
     * @param mistake what often goes wrong here, and how it is seen; nothing where it is not known
     * @param undo how to put that right
     */
    public record Help(
            Optional<Setting> setting,
            List<Double> allowances,
            List<Said> spread,
            List<Reason> why,
            Optional<Demand> demand,
            Said mistake,
            Said undo) {
        /** Nothing to say. */
        public static final Help NONE = new Help(
                Optional.empty(), List.of(), List.of(), List.of(), Optional.empty(), Said.NOTHING, Said.NOTHING);

        public Help {
            allowances = List.copyOf(allowances);
            spread = List.copyOf(spread);
            why = List.copyOf(why);
        }
    }

    /** @param step that must be done before */
    public record Reason(int step, Said because) {}

    /**
     * What a seam is drawn by in the worst pose, from the fit check; shares, not percent.
     *
     * @param pose its name, as it is told
     * @param stands at which the stitch breaks
     */
    public record Demand(Part pose, double needed, double stands) {
        public boolean breaks() {
            return needed > stands;
        }
    }
}
