package stretchwright.lay;

import java.util.List;
import java.util.Locale;
import stretchwright.ground.Said;
import stretchwright.pattern.PieceName;

/**
 * How the pieces lie on the cloth. x runs across the fabric from one selvage (or from the fold), y along it; mm.
 *
 * @param fabricWidth width of the lay as drawn: the folded width when it is folded
 * @param length what the lay needs along the cloth
 * @param buy what the shop is asked for: length with shrinkage and straightening, rounded up as shops sell it
 * @param use share of the cloth used: piece area over lay area
 * @param floor a proven lower bound on length
 * @param ways what each permitted way would need, the shortest first; empty where no other was tried
 * @param doubled how far the cloth lies double: across where it is folded off the middle, along where only part is folded; else 0
 */
public record Lay(
        Method method,
        double fabricWidth,
        double length,
        double buy,
        double use,
        double floor,
        double doubled,
        List<Placement> placements,
        List<Way> ways) {
    /** Where the method alone says where the cloth lies double. */
    public Lay(
            Method method,
            double fabricWidth,
            double length,
            double buy,
            double use,
            double floor,
            List<Placement> placements) {
        this(method, fabricWidth, length, buy, use, floor, 0, placements, List.of());
    }

    public Lay {
        placements = List.copyOf(placements);
        ways = List.copyOf(ways);
    }

    /** So small a share above the floor does not count. */
    static final double NOTHING = 0.0005;

    /** How much longer than the floor, as a share of it. */
    public double aboveFloor() {
        return length / floor - 1;
    }

    /** Whether no lay can be shorter by anything that counts: half a millimetre on a metre. */
    public boolean shortest() {
        return aboveFloor() <= NOTHING;
    }

    /**
     * What the lay needs by one method.
     *
     * @param length of cloth, mm
     */
    public record Way(Method method, double length) {}

    /** How far the spread cloth reaches along, mm: half of what is needed where it is folded crosswise. */
    public double spreadLength() {
        return method == Method.FOLDED_CROSSWISE ? length / 2 : length;
    }

    /** How far from the cloth's left edge it is folded lengthwise from end to end, the left part below, mm; 0 where it is not. */
    public double fold() {
        return switch (method) {
            case FOLDED -> fabricWidth;
            case FOLDED_OFF_THE_MIDDLE -> doubled;
            case OPEN, FOLDED_CROSSWISE, PART_FOLDED -> 0;
        };
    }

    /**
     * Whether the grain of what goes through so many layers is measured from the fold, on the left, and not from the left
     * selvage.
     */
    public boolean fromFold(int layers) {
        return switch (method) {
            case FOLDED, FOLDED_OFF_THE_MIDDLE -> true;
            case OPEN, FOLDED_CROSSWISE -> false;
            case PART_FOLDED -> layers == 2;
        };
    }

    public enum Method {
        FOLDED(Tell.said("method.folded")),
        OPEN(Tell.said("method.open")),
        FOLDED_CROSSWISE(Tell.said("method.folded-crosswise")),
        FOLDED_OFF_THE_MIDDLE(Tell.said("method.folded-off-the-middle")),
        PART_FOLDED(Tell.said("method.part-folded"));

        private final Said said;

        Method(Said said) {
            this.said = said;
        }

        public Said said() {
            return said;
        }

        /** As written in the make file and the report. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
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
            PieceName piece,
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
