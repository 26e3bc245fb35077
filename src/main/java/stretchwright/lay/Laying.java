package stretchwright.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Grid;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Style;

/**
 * Lays the pieces of one garment, or of many, on the cloth.
 *
 * <p>In: pieces, cloth, what the lay has to keep to. Out: the shortest of the lays found, or findings where a piece is
 * wider than the cloth in every permitted way. Promised: no two cut lines come nearer than the gap, all lie inside the
 * usable width and on the cloth there is, the grain runs along the selvage within its tolerance, every copy is there,
 * pieces lie the same way up on one-way cloth (LayCheck, exact on the 0.01 mm grid, run on every answer); the same input
 * gives the same lay. Method and bound: docs/maths/lay.md.
 */
public final class Laying {
    /** Ways within this of the shortest quick lay are searched on. */
    private static final double NEAR = 1.1;
    /** A gap counts as kept where rounding to the grid takes this much of it away, in units. */
    private static final long SLACK = 2;
    /** Rounds of the search that lets parts overlap. */
    private static final Effort USUAL = new Effort(12, 4);
    /** The same where that ends well above the floor: of one garment the floor is near, so there is something to find. */
    private static final Effort MORE = new Effort(160, 40);

    private static final double WELL_ABOVE = 0.002;
    /** The same for an estimate. */
    private static final double WELL_ABOVE_ESTIMATED = 0.02;

    /** The grain is tilted only where that saves at least this, mm; a limit of our own. */
    private static final double WORTH = 5;

    private static final long USUAL_SEED = 1;

    private final List<Piece> pieces;
    private final Fabric fabric;
    private final LayTerms terms;
    private final long seed;

    private Laying(List<Piece> pieces, Fabric fabric, LayTerms terms, long seed) {
        if (pieces.isEmpty()) {
            throw new IllegalArgumentException("there is nothing to lay");
        }
        pieces.forEach(Laying::grainMustStand);
        this.pieces = List.copyOf(pieces);
        this.fabric = fabric;
        this.terms = terms;
        this.seed = seed;
    }

    /** The shortest lay found among the permitted ways; empty, with findings, where a piece fits in none of them. */
    public static Optional<Lay> lay(List<Piece> pieces, Fabric fabric, Style.LayWay way, Findings findings) {
        return lay(pieces, fabric, LayTerms.of(way), USUAL_SEED, findings);
    }

    /** The same with a seed of the search; the same seed gives the same lay. */
    public static Optional<Lay> lay(List<Piece> pieces, Fabric fabric, LayTerms terms, long seed, Findings findings) {
        return ways(pieces, fabric, terms, seed, findings).stream().findFirst();
    }

    /** The shortest lay found for each permitted way, shortest first; none, with findings, where a piece fits in none. */
    public static List<Lay> ways(List<Piece> pieces, Fabric fabric, LayTerms terms, long seed, Findings findings) {
        return new Laying(pieces, fabric, terms, seed).ways(findings, USUAL, ClubClock.NONE, MORE);
    }

    /** The same, searched for as long as the effort and the clock allow; each stretch that is searched has its share of the time. */
    public static List<Lay> ways(
            List<Piece> pieces,
            Fabric fabric,
            LayTerms terms,
            long seed,
            Effort effort,
            ClubClock clock,
            Findings findings) {
        return new Laying(pieces, fabric, terms, seed).ways(findings, effort, clock, Effort.NONE);
    }

    /**
     * What will be needed, before buying, mm: searched for as long as the lay to cut by, but not checked, and of any way
     * only folded in the middle and open, which no other way beats but for what the search misses (docs/maths/lay.md).
     * Empty where a piece is wider than the cloth.
     */
    public static OptionalDouble estimate(List<Piece> pieces, Fabric fabric, LayTerms terms, long seed) {
        Laying laying = new Laying(pieces, fabric, terms, seed);
        List<Lay.Method> methods = laying.permitted().methods(new Findings("estimate")).stream()
                .filter(m -> terms.way() != Style.LayWay.ANY || m == Lay.Method.FOLDED || m == Lay.Method.OPEN)
                .toList();
        Searched searched = laying.searched(laying.plans(methods), USUAL, ClubClock.NONE);
        return laying.searchedOn(searched, MORE, WELL_ABOVE_ESTIMATED).laid.stream()
                .mapToDouble(Laid::length)
                .min();
    }

    /** A way of spreading the cloth, and the layouts of its stretches. */
    private record Laid(Plan plan, List<Layout> layouts) {
        double length() {
            return plan.length(layouts);
        }
    }

    /** @param floor no way of laying needs less, mm */
    private record Searched(List<Laid> laid, double floor) {}

    private List<Lay> ways(Findings findings, Effort effort, ClubClock clock, Effort more) {
        List<Lay.Method> methods = permitted().methods(findings);
        List<Plan> fitting = plans(methods);
        if (fitting.isEmpty()) {
            if (findings.isEmpty()) {
                permitted().tooWide(methods, findings);
            }
            return List.of();
        }
        Searched searched = searchedOn(searched(fitting, effort, clock), more, WELL_ABOVE);
        List<Laid> shortest = shortestOfEach(searched.laid);
        List<Lay.Way> ways = shortest.stream()
                .map(l -> new Lay.Way(l.plan.method(), l.length()))
                .toList();
        return shortest.stream().map(l -> checked(l, searched.floor, ways)).toList();
    }

    /** The shortest quick lay of each way; those near the shortest of all are searched on, but where they reach the floor. */
    private Searched searched(List<Plan> plans, Effort effort, ClubClock clock) {
        // the ways know nothing of each other and may be tried side by side; ties go to the first
        List<Laid> quick =
                shortestOfEach(plans.parallelStream().map(this::quick).toList());
        double shortest = quick.stream().mapToDouble(Laid::length).min().orElse(0);
        if (quick.isEmpty() || effort.equals(Effort.NONE)) {
            return new Searched(quick, quick.isEmpty() ? 0 : floor(plans, 0));
        }
        double floor = floor(plans, shortest);
        Predicate<Laid> worth = l -> l.length() <= NEAR * shortest && l.length() > (1 + Lay.NOTHING) * floor;
        double all =
                quick.stream().filter(worth).mapToInt(l -> l.layouts.size()).sum();
        List<Laid> out = new ArrayList<>();
        int begun = 0;
        for (Laid laid : quick) {
            int stretches = worth.test(laid) ? laid.layouts.size() : 0;
            ClubClock share = clock.within(begun / all, (begun + stretches) / all);
            out.add(stretches > 0 ? longer(laid, effort, share) : laid);
            begun += stretches;
        }
        return new Searched(out, floor);
    }

    /**
     * Where even the shortest lay is well above the floor one is searched on: the open one where there is one, as whatever is
     * folded may be laid open.
     */
    private Searched searchedOn(Searched searched, Effort more, double wellAbove) {
        double shortest = searched.laid.stream().mapToDouble(Laid::length).min().orElse(0);
        if (more.equals(Effort.NONE) || shortest <= (1 + wellAbove) * searched.floor) {
            return searched;
        }
        Laid start = searched.laid.stream()
                .min(Comparator.comparing((Laid l) -> l.plan.method() != Lay.Method.OPEN)
                        .thenComparingDouble(Laid::length))
                .orElseThrow();
        Laid longer = longer(start, more, ClubClock.NONE);
        return new Searched(
                searched.laid.stream().map(l -> l == start ? longer : l).toList(), searched.floor);
    }

    private Permitted permitted() {
        return new Permitted(pieces, fabric, terms);
    }

    /** The ways of spreading on which every piece has a place. */
    private List<Plan> plans(List<Lay.Method> methods) {
        return methods.stream()
                .flatMap(m -> Plan.by(m, pieces, fabric, terms.straight()).stream()
                        .filter(p -> p.method() == m || methods.size() == 1))
                .filter(p -> p.tooWide().isEmpty())
                .toList();
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

    private Laid quick(Plan plan) {
        return new Laid(
                plan,
                plan.spreads().stream().map(s -> new LaySearch(s, seed).quick()).toList());
    }

    private Laid longer(Laid laid, Effort effort, ClubClock clock) {
        if (terms.tilt() == 0) {
            return straight(laid, effort, clock);
        }
        return tilted(straight(laid, effort, clock.within(0, 0.5)), effort, clock.within(0.5, 1));
    }

    private Laid straight(Laid laid, Effort effort, ClubClock clock) {
        return new Laid(laid.plan, stretches(laid.plan.spreads(), laid.layouts, effort, clock));
    }

    /** Each stretch has an equal share of the time. */
    private List<Layout> stretches(List<Spread> spreads, List<Layout> starts, Effort effort, ClubClock clock) {
        List<Layout> out = new ArrayList<>();
        double all = spreads.size();
        for (int i = 0; i < spreads.size(); i++) {
            Layout start = starts.get(i).of(spreads.get(i).parts);
            out.add(new LaySearch(spreads.get(i), seed).longer(start, effort, clock.part(i / all, (i + 1) / all)));
        }
        return out;
    }

    private Laid tilted(Laid straight, Effort effort, ClubClock clock) {
        List<Spread> spreads = straight.plan.spreads().stream()
                .map(s -> s.tilted(terms.tilt()))
                .toList();
        Laid tilted = new Laid(
                new Plan(straight.plan.method(), spreads), stretches(spreads, straight.layouts, effort, clock));
        return tilted.length() <= straight.length() - WORTH ? tilted : straight;
    }

    private Lay checked(Laid laid, double floor, List<Lay.Way> ways) {
        double length = laid.length();
        Plan plan = laid.plan;
        Lay lay = new Lay(
                plan.method(),
                plan.drawnWidth(),
                length,
                Shop.metric(Shop.needed(length, fabric)),
                plan.use(laid.layouts),
                floor,
                plan.doubled(laid.layouts),
                plan.placements(laid.layouts),
                ways);
        List<String> faults = LayCheck.faults(pieces, fabric, terms, lay);
        if (!faults.isEmpty()) {
            throw new IllegalStateException("the lay does not hold: " + String.join("; ", faults));
        }
        return lay;
    }

    /**
     * The least over the ways that fit, mm. Whatever is folded can be unfolded into an open lay of the same length, so the
     * open lay's floor holds for every way.
     *
     * @param known the length of the shortest lay found so far, mm; 0 for a floor worked out quickly
     */
    private double floor(List<Plan> fitting, double known) {
        boolean onlyFolded = fitting.stream().allMatch(p -> p.method() == Lay.Method.FOLDED);
        List<Cut> cuts = Cut.all(pieces, onlyFolded ? Lay.Method.FOLDED : Lay.Method.OPEN);
        long width = Spread.whole(fabric) / (onlyFolded ? 2 : 1);
        long plain = Floor.under(cuts, width, terms.tilt());
        long most = Grid.units(known);
        if (terms.tilt() > 0 || plain >= most) {
            return Grid.mm(plain);
        }
        long gap = Math.max(0, Grid.units(terms.gap()) - SLACK);
        return Grid.mm(Math.max(plain, StackFloor.under(cuts, width, !fabric.oneWay(), gap, most)));
    }

    private static void grainMustStand(Piece piece) {
        if (Math.abs(piece.grain().from().x() - piece.grain().to().x()) >= Grid.STEP / 2) {
            throw new IllegalArgumentException(
                    piece.name() + ": the grain must run along y to be laid, not " + piece.grain());
        }
    }
}
