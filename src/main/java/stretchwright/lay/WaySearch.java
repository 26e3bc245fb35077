package stretchwright.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Grid;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.LayClock;
import stretchwright.lay.nest.Layout;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Style;

/**
 * Searches the ways of spreading the cloth for the shortest lay: each quickly, those near the shortest further, and at last,
 * where that is well above what no lay goes below, one of them for longer.
 */
final class WaySearch {
    /** Ways within this of the shortest quick lay are searched on. */
    private static final double NEAR = 1.1;
    /** The grain is tilted only where that saves at least this, mm; a limit of our own. */
    private static final double WORTH = 5;
    /** A gap counts as kept where rounding to the grid takes this much of it away, in units. */
    private static final long SLACK = 2;

    private final List<Piece> pieces;
    private final Fabric fabric;
    private final LayTerms terms;
    private final long seed;

    WaySearch(List<Piece> pieces, Fabric fabric, LayTerms terms, long seed) {
        this.pieces = pieces;
        this.fabric = fabric;
        this.terms = terms;
        this.seed = seed;
    }

    /** A way of spreading the cloth, and the layouts of its stretches. */
    record Laid(Plan plan, List<Layout> layouts) {
        double length() {
            return plan.length(layouts);
        }
    }

    /**
     * @param laid the shortest of each way, the shortest first
     * @param floor no way of laying needs less, mm
     */
    record Found(List<Laid> laid, double floor) {
        Found {
            laid = List.copyOf(laid);
        }

        double length() {
            return laid.stream().mapToDouble(Laid::length).min().orElse(0);
        }
    }

    /** The shortest quick lay of each way; those near the shortest of all are searched on, but where they reach the floor. */
    Found ways(List<Plan> plans, Effort effort, ClubClock clock) {
        if (plans.isEmpty()) {
            return new Found(List.of(), 0);
        }
        LayClock beside = clock.beside();
        ForkJoinTask<Long> sections = ForkJoinPool.commonPool().submit(() -> floorOfSections(plans, beside));
        // the ways know nothing of each other and may be tried side by side; ties go to the first
        List<Laid> quick =
                shortestOfEach(plans.parallelStream().map(p -> quick(p, beside)).toList());
        if (effort.equals(Effort.NONE)) {
            return new Found(quick, floor(0, sections.join(), beside));
        }
        double shortest = quick.stream().mapToDouble(Laid::length).min().orElseThrow();
        double floor = floor(shortest, sections.join(), beside);
        Predicate<Laid> worth = l -> l.length() <= NEAR * shortest && l.length() > (1 + Lay.NOTHING) * floor;
        double all =
                quick.stream().filter(worth).mapToInt(l -> l.layouts.size()).sum();
        List<Supplier<Laid>> out = new ArrayList<>();
        int begun = 0;
        for (Laid laid : quick) {
            int stretches = worth.test(laid) ? laid.layouts.size() : 0;
            ClubClock share = clock.within(begun / all, (begun + stretches) / all);
            out.add(() -> stretches > 0 ? longer(laid, effort, floor, share) : laid);
            begun += stretches;
        }
        // a worker that waits for the other of its crew leaves its place to another crew's
        Stream<Supplier<Laid>> searches = clock.inTurn() ? out.stream() : out.parallelStream();
        return new Found(shortestOfEach(searches.map(Supplier::get).toList()), floor);
    }

    /**
     * Where even the shortest lay is well above the floor one is searched on: the open one where it is near, as whatever is
     * folded may be laid open. Not where the grain may be tilted: of that the floor knows too little.
     */
    Found on(Found found, Effort more, double wellAbove, ClubClock clock) {
        double shortest = found.length();
        if (more.equals(Effort.NONE) || terms.tilt() > 0 || shortest <= (1 + wellAbove) * found.floor) {
            return found;
        }
        Laid start = found.laid.stream()
                .filter(l -> l.length() <= NEAR * shortest)
                .min(Comparator.comparing((Laid l) -> l.plan.method() != Lay.Method.OPEN)
                        .thenComparingDouble(Laid::length))
                .orElseThrow();
        Laid longer = longer(start, more, found.floor, clock);
        return new Found(
                shortestOfEach(
                        found.laid.stream().map(l -> l == start ? longer : l).toList()),
                found.floor);
    }

    /** Folded in the middle comes first where it needs at most a millimetre more: it is cut in one go. */
    private static List<Laid> shortestOfEach(List<Laid> all) {
        List<Laid> out = new ArrayList<>();
        all.stream()
                .sorted(Comparator.comparingDouble(l -> l.length() + (l.plan.method() == Lay.Method.FOLDED ? 0 : 1)))
                .forEach(l -> {
                    if (out.stream().noneMatch(o -> o.plan.method() == l.plan.method())) {
                        out.add(l);
                    }
                });
        return out;
    }

    private Laid quick(Plan plan, LayClock beside) {
        return new Laid(
                plan,
                plan.spreads().stream()
                        .map(s -> new LaySearch(s, seed, beside).quick())
                        .toList());
    }

    /** @param floor no lay is shorter, mm: a search that comes down to it is over */
    private Laid longer(Laid laid, Effort effort, double floor, ClubClock clock) {
        if (terms.tilt() == 0) {
            return straight(laid, effort, floor, clock);
        }
        return tilted(straight(laid, effort, floor, clock.within(0, 0.5)), effort, floor, clock.within(0.5, 1));
    }

    private Laid straight(Laid laid, Effort effort, double floor, ClubClock clock) {
        return new Laid(laid.plan, stretches(laid.plan, laid.layouts, effort, floor, clock));
    }

    /** Each stretch has an equal share of the time; none is begun once it is to stop. */
    private List<Layout> stretches(Plan plan, List<Layout> starts, Effort effort, double floor, ClubClock clock) {
        List<Spread> spreads = plan.spreads();
        double enough = plan.least(floor);
        List<Layout> out = new ArrayList<>();
        double all = spreads.size();
        for (int i = 0; i < spreads.size(); i++) {
            Layout start = starts.get(i).of(spreads.get(i).parts);
            LayClock part = clock.part(i / all, (i + 1) / all);
            out.add(
                    clock.beside().stop()
                            ? start
                            : new LaySearch(spreads.get(i), seed, clock.beside()).longer(start, effort, enough, part));
        }
        return out;
    }

    private Laid tilted(Laid straight, Effort effort, double floor, ClubClock clock) {
        List<Spread> spreads = straight.plan.spreads().stream()
                .map(s -> s.tilted(terms.tilt()))
                .toList();
        Plan plan = new Plan(straight.plan.method(), spreads);
        Laid tilted = new Laid(plan, stretches(plan, straight.layouts, effort, floor, clock));
        return tilted.length() <= straight.length() - WORTH ? tilted : straight;
    }

    /**
     * No lay by any permitted way is shorter, mm. Whatever is folded can be unfolded into an open lay of the same length, but
     * for the gap at the fold, of which the floor knows nothing across; so the open lay's floor holds for every way.
     *
     * @param known the length of the shortest lay found so far, mm; 0 for a floor worked out quickly
     * @param plain the floor by sections alone, in units
     * @param beside cuts it short: what is proved until then holds
     */
    private double floor(double known, long plain, LayClock beside) {
        long most = Grid.units(known);
        if (terms.tilt() > 0 || plain >= most) {
            return Grid.mm(plain);
        }
        long gap = Math.max(0, Grid.units(terms.gap()) - SLACK);
        long stacked =
                StackFloor.under(cutsOfFloor(), widthOfFloor(), !fabric.roll().oneWay(), gap, most, beside::stop);
        // pieces that touch the fold across leave no gap at it, so unfolded they come a gap nearer to each other
        long atFold = fabric.roll().oneWay() ? 0 : gap;
        return Grid.mm(Math.max(plain, stacked - atFold));
    }

    private long floorOfSections(List<Plan> plans, LayClock beside) {
        return plans.stream()
                .filter(p -> beside == LayClock.NONE && terms.tilt() == 0 && p.method() == methodOfFloor())
                .findFirst()
                .map(p -> p.spreads().get(0).floorOfCuts())
                .orElseGet(() -> Floor.under(cutsOfFloor(), widthOfFloor(), terms.tilt(), beside::stop));
    }

    private Lay.Method methodOfFloor() {
        return terms.way() == Style.LayWay.FOLDED ? Lay.Method.FOLDED : Lay.Method.OPEN;
    }

    private List<Cut> cutsOfFloor() {
        return Cut.all(pieces, methodOfFloor());
    }

    private long widthOfFloor() {
        return Spread.whole(fabric) / (methodOfFloor() == Lay.Method.FOLDED ? 2 : 1);
    }
}
