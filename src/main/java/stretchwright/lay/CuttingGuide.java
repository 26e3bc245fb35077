package stretchwright.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.pattern.Piece;

/**
 * In which order the pieces of a lay are placed, weighted and cut, and how each one lies.
 *
 * <p>Long pieces first, from the edge that carries the grain (the fold, else the left selvage) outwards: a long piece
 * off grain twists, and what is placed later can be moved. Then what lies on the fold, then the rest from the near end
 * of the cloth to the far one. A long table is worked through an arm's reach after the other, cloth that is part folded
 * with its folded stretch first. Common practice, no source.
 *
 * @param print where the print meets; empty where it need not
 */
public record CuttingGuide(Lay.Method method, List<Step> steps, Optional<PrintMatch> print) {
    /** A piece at least this share of the longest is long; common practice, no source. */
    private static final double LONG = 0.5;

    /** So far along the cloth is placed and cut before one walks on, mm; common practice, no source. */
    private static final double REACH = 1500;

    /** From weight to weight along the grain at most, mm; common practice, no source. */
    static final double BETWEEN_WEIGHTS = 400;

    public CuttingGuide {
        steps = List.copyOf(steps);
    }

    /**
     * One placement to be cut.
     *
     * @param number in the order of cutting, from 1
     * @param turnedOver the paper lies with its printed side down
     * @param headDown turned by half a turn: the piece's top points to the near end (y = 0) of the cloth
     * @param count how many pieces the cut yields
     * @param fromEdge both ends of the grain line, from the fold or the left selvage, mm; where it is not told how wide the
     *     strip at the selvage is, from the left edge of the usable width
     * @param fromEnd the nearest point of the piece from the near end of the lay, mm
     * @param weights where weights lie, in the axes of the lay, mm
     */
    public record Step(
            int number,
            String piece,
            int copy,
            Hand hand,
            boolean turnedOver,
            boolean headDown,
            boolean onFold,
            int layers,
            int count,
            List<Double> fromEdge,
            double fromEnd,
            List<Point> weights) {
        public Step {
            fromEdge = List.copyOf(fromEdge);
            weights = List.copyOf(weights);
        }
    }

    /**
     * Where a print meets: at this notch, on every piece that has it; where a piece has several of that name, at the first.
     *
     * @param from the lowest of these notches from the near end of the lay, mm; the others lie whole repeats beyond it
     */
    public record PrintMatch(String notch, double repeat, double from) {}

    /** A placement with what its piece adds. */
    private record Laid(Lay.Placement placement, Piece piece, Box box) {
        boolean atFold() {
            return piece.onFold() && !placement.unfolded();
        }

        double reach() {
            return Math.floor(box.minY() / REACH);
        }
    }

    /** @param matchAt the notch at which a print is to meet */
    public static CuttingGuide of(Lay lay, List<Piece> pieces, Fabric fabric, Optional<String> matchAt) {
        List<Laid> all = lay.placements().stream().map(p -> laid(p, pieces)).toList();
        List<Step> steps = new ArrayList<>();
        for (Laid l : all.stream().sorted(order(lay, all)).toList()) {
            double aside = lay.fromFold(l.placement().layers())
                    ? 0
                    : fabric.roll().shape().selvage();
            steps.add(step(steps.size() + 1, l, aside));
        }
        return new CuttingGuide(
                lay.method(),
                steps,
                matchAt.filter(n -> fabric.roll().repeatAlong() > 0)
                        .flatMap(n -> print(n, all, fabric.roll().repeatAlong())));
    }

    private static Laid laid(Lay.Placement placement, List<Piece> pieces) {
        Piece piece = pieces.stream()
                .filter(p -> p.name().equals(placement.piece()))
                .findFirst()
                .orElseThrow();
        return new Laid(placement, piece, OnCloth.outline(piece, placement).box());
    }

    private static Comparator<Laid> order(Lay lay, List<Laid> all) {
        double longest = all.stream().mapToDouble(l -> l.box().height()).max().orElse(0);
        Predicate<Laid> isShort = l -> l.box().height() < LONG * longest;
        boolean parts = lay.method() == Lay.Method.PART_FOLDED;
        return Comparator.comparing((Laid l) -> parts && l.placement().layers() == 1)
                .thenComparing(Laid::reach)
                .thenComparing(isShort::test)
                .thenComparing(l -> isShort.test(l) && !l.atFold())
                .thenComparing(l -> isShort.test(l) ? l.box().minY() : l.box().minX())
                .thenComparing(l -> l.box().minX())
                .thenComparing(l -> l.box().minY())
                .thenComparing(l -> l.placement().piece())
                .thenComparing(l -> l.placement().copy());
    }

    private static Optional<PrintMatch> print(String notch, List<Laid> all, double repeat) {
        return all.stream()
                .flatMap(l -> l.piece().notches().stream()
                        .filter(n -> n.name().equals(notch))
                        .limit(1)
                        .map(n -> OnCloth.at(n.at(), l.placement()).y()))
                .min(Comparator.naturalOrder())
                .map(y -> new PrintMatch(notch, repeat, y));
    }

    private static Step step(int number, Laid l, double aside) {
        Lay.Placement p = l.placement();
        return new Step(
                number,
                p.piece(),
                p.copy(),
                Hand.of(l.piece(), p),
                p.mirrored(),
                Math.abs(p.rotation()) > 90,
                l.atFold(),
                p.layers(),
                l.atFold() ? 1 : p.layers(),
                p.fromSelvage().stream().map(d -> d + aside).toList(),
                l.box().minY(),
                weights(l));
    }

    /** Both ends of the grain line and between them as often as is needed. */
    private static List<Point> weights(Laid l) {
        List<Point> ends = OnCloth.grain(l.piece(), l.placement());
        int gaps = (int) Math.max(1, Math.ceil(ends.get(0).distance(ends.get(1)) / BETWEEN_WEIGHTS));
        List<Point> out = new ArrayList<>();
        for (int i = 0; i <= gaps; i++) {
            out.add(ends.get(0).towards(ends.get(1), (double) i / gaps).onGrid());
        }
        return out;
    }

    /** Whether some pieces lie beyond an arm's reach of the near end. */
    public boolean inReaches() {
        return steps.stream().anyMatch(s -> s.fromEnd() >= REACH);
    }

    /** The first step of this piece and copy. */
    public Step step(String piece, int copy) {
        return steps.stream()
                .filter(s -> s.piece().equals(piece) && s.copy() == copy)
                .findFirst()
                .orElseThrow();
    }
}
