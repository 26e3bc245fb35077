package stretchwright.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Grid;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.LayClock;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Piece;

/**
 * Searches on from a lay, in the way that it is laid.
 *
 * <p>In: pieces, cloth, a lay of them that holds, the pieces that are to stay where they are. Out: a lay that holds and is no longer;
 * the same one where none was found. What is pinned is to the search what a flaw is: a place where nothing else may lie.
 */
public final class Onward {
    private final List<Piece> pieces;
    private final Fabric fabric;
    private final LayTerms terms;

    public Onward(List<Piece> pieces, Fabric fabric, LayTerms terms) {
        this.pieces = List.copyOf(pieces);
        this.fabric = fabric;
        this.terms = terms;
    }

    /** The stretches of a lay, each with the placements on it in the order of its cuts. */
    private record Stretches(List<Spread> spreads, List<List<Lay.Placement>> own) {}

    /**
     * @param pinned which pieces stay where they are, by {@link Placed#id}
     * @param clock ends it sooner
     */
    public Lay shorter(Lay from, Set<String> pinned, long seed, Effort effort, LayClock clock) {
        Optional<Stretches> stretches = stretches(from);
        if (stretches.isEmpty()) {
            return from;
        }
        Placed found = Placed.of(from).put(spots(from, stretches.get(), pinned, seed, effort, clock));
        Relaying.Tried tried = new Relaying(pieces, fabric, terms)
                .tried(from, found)
                .orElseThrow(() -> new IllegalStateException("the lay is of other pieces"));
        if (!tried.holds() && pinned.isEmpty()) {
            throw new IllegalStateException("the lay does not hold: " + tried.troubles());
        }
        return tried.holds() && Grid.units(tried.lay().length()) < Grid.units(from.length()) ? tried.lay() : from;
    }

    private List<Placed.Spot> spots(
            Lay from, Stretches stretches, Set<String> pinned, long seed, Effort effort, LayClock clock) {
        List<Placed.Spot> out = new ArrayList<>();
        double foot = 0;
        double wasFoot = 0;
        double enough = stretches.spreads.size() > 1 ? 0 : from.floor() / (from.spreadLength() < from.length() ? 2 : 1);
        boolean held = stretches.own.stream()
                .skip(1)
                .anyMatch(own -> own.stream().anyMatch(p -> pinned.contains(Placed.id(p))));
        for (int i = 0; i < stretches.spreads.size(); i++) {
            List<Lay.Placement> own = stretches.own.get(i);
            // what is pinned on a later stretch stays only where the ones before it keep their length
            boolean stays = held && i + 1 < stretches.spreads.size();
            Stretch stretch = new Stretch(stretches.spreads.get(i), own, wasFoot, stays ? ids(own) : pinned);
            Stretch.Found found = stretch.search(seed, effort, enough, clock);
            for (Lay.Placement p : found.placements(foot)) {
                out.add(spot(p));
            }
            foot = Grid.snap(foot + found.length() + stretch.gap());
            wasFoot = Grid.snap(wasFoot + stretch.length() + stretch.gap());
        }
        return out;
    }

    private static Set<String> ids(List<Lay.Placement> all) {
        return all.stream().map(Placed::id).collect(Collectors.toSet());
    }

    private static Placed.Spot spot(Lay.Placement p) {
        return new Placed.Spot(
                p.piece().word(), p.copy(), p.x(), p.y(), p.rotation(), p.mirrored(), p.unfolded(), p.layers());
    }

    /** Empty where the lay is none that the search itself could have begun. */
    private Optional<Stretches> stretches(Lay from) {
        boolean tilted = from.placements().stream().anyMatch(p -> p.rotation() % 180 != 0);
        for (Plan plan : Plan.by(from.method(), pieces, fabric, terms.straight())) {
            boolean same = plan.method() == from.method()
                    && (from.method() != Lay.Method.FOLDED_OFF_THE_MIDDLE
                            || plan.spreads().get(0).doubled == Grid.units(from.doubled()));
            List<List<Lay.Placement>> own = same ? own(plan, from) : List.of();
            if (same
                    && own.stream().mapToInt(List::size).sum()
                            == from.placements().size()) {
                List<Spread> spreads = plan.spreads().stream()
                        .map(s -> tilted ? s.tilted(terms.tilt()) : s)
                        .toList();
                return Optional.of(new Stretches(spreads, own));
            }
        }
        return Optional.empty();
    }

    private static List<List<Lay.Placement>> own(Plan plan, Lay from) {
        List<List<Lay.Placement>> out = new ArrayList<>();
        for (Spread spread : plan.spreads()) {
            List<Lay.Placement> own = new ArrayList<>();
            for (Cut cut : spread.cuts) {
                for (int i = 0; i < from.placements().size(); i++) {
                    Lay.Placement p = from.placements().get(i);
                    if (p.piece().equals(cut.piece().name())
                            && p.copy() == cut.copy()
                            && p.mirrored() == cut.mirrored()
                            && p.unfolded() == cut.unfolded()
                            && p.layers() == cut.layers()) {
                        own.add(p);
                    }
                }
            }
            if (own.size() != spread.cuts.size()) {
                return List.of();
            }
            out.add(own);
        }
        return out;
    }
}
