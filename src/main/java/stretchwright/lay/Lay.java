package stretchwright.lay;

import java.util.List;
import java.util.Locale;

/**
 * How the pieces lie on the cloth. x runs across the fabric from one selvage (or from the fold), y along it; mm.
 *
 * @param fabricWidth width of the lay as drawn: the folded width when it is folded
 * @param length what the lay needs along the cloth
 * @param buy what the shop is asked for: length with shrinkage and straightening, rounded up as shops sell it
 * @param use share of the cloth used: piece area over lay area
 * @param floor a proven lower bound on length
 */
public record Lay(
        Method method,
        double fabricWidth,
        double length,
        double buy,
        double use,
        double floor,
        List<Placement> placements) {
    public Lay {
        placements = List.copyOf(placements);
    }

    public enum Method {
        FOLDED,
        OPEN;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * One piece on the cloth: mirrored (x to -x) if mirrored, then turned by rotation degrees about the origin, then
     * moved by (x, y).
     *
     * @param copy 1, 2, ... among the placements of that piece
     * @param unfolded a piece on the fold laid open: stands for the half and its mirror image together
     * @param layers 1, or 2: through two layers one placement yields a mirrored pair
     * @param fromSelvage distance of both ends of the grain line from the selvage at x = 0 (from the fold, when
     *     folded), mm: equal when the grain is straight
     */
    public record Placement(
            String piece,
            int copy,
            double x,
            double y,
            double rotation,
            boolean mirrored,
            boolean unfolded,
            int layers,
            List<Double> fromSelvage) {
        public Placement {
            fromSelvage = List.copyOf(fromSelvage);
        }
    }
}
