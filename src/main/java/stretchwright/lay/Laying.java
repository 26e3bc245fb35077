package stretchwright.lay;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Grid;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.LayClock;
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
    /** Rounds of the search that lets parts overlap. */
    private static final Effort USUAL = new Effort(12, 4);
    /** The same where that ends well above the floor: of one garment the floor is near, so there is something to find. */
    private static final Effort MORE = new Effort(160, 40);

    private static final double WELL_ABOVE = 0.002;
    /** The same for an estimate. */
    private static final double WELL_ABOVE_ESTIMATED = 0.02;

    private static final long USUAL_SEED = 1;

    private final List<Piece> pieces;
    private final Fabric fabric;
    private final LayTerms terms;
    private final WaySearch search;

    private Laying(List<Piece> pieces, Fabric fabric, LayTerms terms, long seed) {
        if (pieces.isEmpty()) {
            throw new IllegalArgumentException("there is nothing to lay");
        }
        pieces.forEach(Laying::grainMustStand);
        this.pieces = List.copyOf(pieces);
        this.fabric = fabric;
        this.terms = terms;
        this.search = new WaySearch(this.pieces, fabric, terms, seed);
    }

    /** The shortest lay found among the permitted ways; empty, with findings, where a piece fits in none of them. */
    public static Optional<Lay> lay(List<Piece> pieces, Fabric fabric, Style.LayWay way, Findings findings) {
        return lay(pieces, fabric, LayTerms.of(way), USUAL_SEED, findings);
    }

    /** The same with a seed of the search; the same seed gives the same lay. */
    public static Optional<Lay> lay(List<Piece> pieces, Fabric fabric, LayTerms terms, long seed, Findings findings) {
        return lay(pieces, fabric, terms, seed, LayClock.NONE, findings);
    }

    /** The same; once the clock says stop with what was found until then, which no seed gives again. */
    public static Optional<Lay> lay(
            List<Piece> pieces, Fabric fabric, LayTerms terms, long seed, LayClock clock, Findings findings) {
        SearchWork work = new SearchWork(seed, USUAL, ClubClock.of(clock));
        return new Laying(pieces, fabric, terms, seed)
                .ways(Optional.empty(), findings, work, MORE).stream().findFirst();
    }

    /** The shortest lay found for each permitted way, shortest first; none, with findings, where a piece fits in none. */
    public static List<Lay> ways(List<Piece> pieces, Fabric fabric, LayTerms terms, long seed, Findings findings) {
        return new Laying(pieces, fabric, terms, seed)
                .ways(Optional.empty(), findings, SearchWork.of(seed, USUAL), MORE);
    }

    /**
     * The same, searched for as long as the work allows; each stretch that is searched has its share of the time.
     *
     * @param only the one way to try of those permitted, or the plainer one that comes to the same; the floor holds for all that are permitted
     */
    public static List<Lay> ways(
            List<Piece> pieces,
            Fabric fabric,
            LayTerms terms,
            Optional<Lay.Method> only,
            SearchWork work,
            Findings findings) {
        return new Laying(pieces, fabric, terms, work.seed()).ways(only, findings, work, Effort.NONE);
    }

    /** Whether the pieces can be laid at all: no, with findings, where a piece is wider than the cloth in every permitted way. */
    public static boolean fits(List<Piece> pieces, Fabric fabric, LayTerms terms, Findings findings) {
        return !new Laying(pieces, fabric, terms, USUAL_SEED)
                .fitting(Optional.empty(), findings)
                .isEmpty();
    }

    /**
     * What will be needed, before buying, mm: searched as the lay to cut by, or to 2 % above the floor; not checked, and of any way
     * only folded in the middle and open, which no other way beats but for what the search misses (docs/maths/lay.md).
     * Empty where a piece is wider than the cloth.
     */
    public static OptionalDouble estimate(List<Piece> pieces, Fabric fabric, LayTerms terms, long seed) {
        return estimate(pieces, fabric, terms, seed, LayClock.NONE);
    }

    /** The same; once the clock says stop by what was found until then. */
    public static OptionalDouble estimate(
            List<Piece> pieces, Fabric fabric, LayTerms terms, long seed, LayClock clock) {
        Laying laying = new Laying(pieces, fabric, terms, seed);
        List<Lay.Method> methods = laying.permitted().methods(new Findings("estimate")).stream()
                .filter(m -> terms.way() != Style.LayWay.ANY || m == Lay.Method.FOLDED || m == Lay.Method.OPEN)
                .toList();
        WaySearch.Found found = laying.search.ways(laying.plans(methods), USUAL, ClubClock.of(clock));
        return laying.search.on(found, MORE, WELL_ABOVE_ESTIMATED, ClubClock.of(clock)).laid().stream()
                .mapToDouble(WaySearch.Laid::length)
                .min();
    }

    private List<Lay> ways(Optional<Lay.Method> only, Findings findings, SearchWork work, Effort more) {
        List<Plan> fitting = fitting(only, findings);
        if (fitting.isEmpty()) {
            return List.of();
        }
        WaySearch.Found found =
                search.on(search.ways(fitting, work.effort(), work.clock()), more, WELL_ABOVE, work.clock());
        List<Lay.Way> ways = found.laid().stream()
                .map(l -> new Lay.Way(l.plan().method(), l.length()))
                .toList();
        return found.laid().stream().map(l -> checked(l, found.floor(), ways)).toList();
    }

    /** None, with findings, where the cloth does not allow what is asked for or a piece is wider than it. */
    private List<Plan> fitting(Optional<Lay.Method> only, Findings findings) {
        List<Lay.Method> permitted = permitted().methods(findings);
        List<Lay.Method> methods =
                permitted.isEmpty() ? permitted : only.map(List::of).orElse(permitted);
        List<Plan> fitting = plans(methods);
        if (fitting.isEmpty() && findings.isEmpty()) {
            permitted().tooWide(methods, findings);
        }
        return fitting;
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

    private Lay checked(WaySearch.Laid laid, double floor, List<Lay.Way> ways) {
        double length = laid.length();
        Plan plan = laid.plan();
        Lay lay = new Lay(
                plan.method(),
                plan.drawnWidth(),
                length,
                Shop.metric(Shop.needed(length, fabric)),
                plan.use(laid.layouts()),
                floor,
                plan.doubled(laid.layouts()),
                plan.placements(laid.layouts()),
                ways);
        List<String> faults = LayCheck.faults(pieces, fabric, terms, lay);
        if (!faults.isEmpty()) {
            throw new IllegalStateException("the lay does not hold: " + String.join("; ", faults));
        }
        return lay;
    }

    private static void grainMustStand(Piece piece) {
        if (Math.abs(piece.grain().from().x() - piece.grain().to().x()) >= Grid.STEP / 2) {
            throw new IllegalArgumentException(
                    piece.name() + ": the grain must run along y to be laid, not " + piece.grain());
        }
    }
}
