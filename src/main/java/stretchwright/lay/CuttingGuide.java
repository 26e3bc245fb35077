package stretchwright.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.pattern.Piece;

/**
 * In which order the pieces of a lay are placed, weighted and cut, and how each one lies.
 *
 * <p>Long pieces first, from the edge that carries the grain (the fold, else the left selvage) outwards: a long piece
 * off grain twists, and what is placed later can be moved. Then what lies on the fold, then the rest from the near end
 * of the cloth to the far one. Common practice, no source.
 */
public record CuttingGuide(Lay.Method method, List<Step> steps) {
    /** A piece at least this share of the longest is long; common practice, no source. */
    private static final double LONG = 0.5;

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
     * @param fromEdge both ends of the grain line, from the fold or the left selvage, mm
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

    /** A placement with what its piece adds. */
    private record Laid(Lay.Placement placement, Piece piece, Box box) {
        boolean atFold() {
            return piece.onFold() && !placement.unfolded();
        }
    }

    public static CuttingGuide of(Lay lay, List<Piece> pieces) {
        List<Laid> all = new ArrayList<>();
        for (Lay.Placement p : lay.placements()) {
            Piece piece = piece(pieces, p.piece());
            all.add(new Laid(p, piece, OnCloth.outline(piece, p).box()));
        }
        double longest = all.stream().mapToDouble(l -> l.box().height()).max().orElse(0);
        all.sort(Comparator.comparing((Laid l) -> l.box().height() < LONG * longest)
                .thenComparing(l -> l.box().height() < LONG * longest && !l.atFold())
                .thenComparing(l -> l.box().height() < LONG * longest
                        ? l.box().minY()
                        : l.box().minX())
                .thenComparing(l -> l.box().minX())
                .thenComparing(l -> l.box().minY())
                .thenComparing(l -> l.placement().piece())
                .thenComparing(l -> l.placement().copy()));
        List<Step> steps = new ArrayList<>();
        for (Laid l : all) {
            steps.add(step(steps.size() + 1, l));
        }
        return new CuttingGuide(lay.method(), steps);
    }

    private static Piece piece(List<Piece> pieces, String name) {
        return pieces.stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
    }

    private static Step step(int number, Laid l) {
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
                p.fromSelvage(),
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

    /** The first step of this piece and copy. */
    public Step step(String piece, int copy) {
        return steps.stream()
                .filter(s -> s.piece().equals(piece) && s.copy() == copy)
                .findFirst()
                .orElseThrow();
    }
}
