package stretchwright.pattern;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.ground.Said;

/**
 * Into which parts the leg is cut, and what is added to it.
 *
 * @param sideSeam none, or one that takes in the waist at the side
 * @param panelWidth finished width of a strip along the side in a second colour, mm
 * @param gusset a diamond at the crotch
 * @param kneeShaping room for the bent knee
 */
public record Parts(
        SideSeam sideSeam,
        OptionalDouble panelWidth,
        Optional<Gusset> gusset,
        boolean kneeShaping,
        List<Pocket> pockets) {
    /**
     * A pad adds this many times its thickness to the girth it lies under: the middle of the 1 to 2 that people give
     * (makers-troubles section 5.3, design value of low confidence).
     */
    public static final double BULGE_PER_THICKNESS = 1.5;

    public enum SideSeam {
        NONE,
        SHAPED
    }

    /** A diamond, finished: length from front to back and width from leg to leg, mm. */
    public record Gusset(double length, double width) {}

    /**
     * A pocket, mm.
     *
     * @param width of the finished pocket for a telephone; of the pad for a pad
     * @param height the same
     * @param thickness of what is worn inside; 0 where it is flat
     */
    public record Pocket(Kind kind, double width, double height, double thickness) {
        /** A pad's pocket is larger than the pad by this much each way (makers-troubles section 5.3). */
        public static final double ROOM_FOR_PAD = 5;

        public enum Kind {
            /** Flat, on the outer thigh, for a telephone. */
            PHONE("phone", 1, PieceKind.PHONE_POCKET, MarkName.PHONE_POCKET, Tell.said("pocket.phone")),
            /** Inside, over the hip bone, for a pad. */
            HIP_PAD("hip pad", 2, PieceKind.HIP_PAD_POCKET, MarkName.HIP_PAD_POCKET, Tell.said("pocket.hip-pad")),
            /** Inside, over the tailbone. */
            TAILBONE_PAD(
                    "tailbone pad",
                    1,
                    PieceKind.TAILBONE_PAD_POCKET,
                    MarkName.TAILBONE_PAD_POCKET,
                    Tell.said("pocket.tailbone-pad")),
            /** Inside, over the kneecap. */
            KNEE_PAD("knee pad", 2, PieceKind.KNEE_PAD_POCKET, MarkName.KNEE_PAD_POCKET, Tell.said("pocket.knee-pad"));

            private final String word;
            private final int inAPair;
            private final PieceKind piece;
            private final MarkName mark;
            private final Said said;

            Kind(String word, int inAPair, PieceKind piece, MarkName mark, Said said) {
                this.word = word;
                this.inAPair = inAPair;
                this.piece = piece;
                this.mark = mark;
                this.said = said;
            }

            /** As written in the make file. */
            public String word() {
                return word;
            }

            public Said said() {
                return said;
            }

            /** How many of them a pair of leggings has. */
            public int inAPair() {
                return inAPair;
            }

            /** The pocket's piece. */
            public PieceName piece() {
                return PieceName.of(piece);
            }

            /** Where it is sewn on. */
            public MarkName mark() {
                return mark;
            }
        }

        public double finishedWidth() {
            return width + (kind == Kind.PHONE ? 0 : ROOM_FOR_PAD);
        }

        public double finishedHeight() {
            return height + (kind == Kind.PHONE ? 0 : ROOM_FOR_PAD);
        }
    }

    /** One piece per leg, nothing added. */
    public static final Parts PLAIN =
            new Parts(SideSeam.NONE, OptionalDouble.empty(), Optional.empty(), false, List.of());

    public Parts {
        pockets = List.copyOf(pockets);
    }

    public Parts with(SideSeam other) {
        return new Parts(other, panelWidth, gusset, kneeShaping, pockets);
    }

    public Parts with(Gusset other) {
        return new Parts(sideSeam, panelWidth, Optional.of(other), kneeShaping, pockets);
    }

    public Parts withPanel(double width) {
        return new Parts(sideSeam, OptionalDouble.of(width), gusset, kneeShaping, pockets);
    }

    public Parts withKneeShaping() {
        return new Parts(sideSeam, panelWidth, gusset, true, pockets);
    }

    public Parts with(List<Pocket> other) {
        return new Parts(sideSeam, panelWidth, gusset, kneeShaping, other);
    }

    /** Whether the leg is cut along its side. */
    public boolean cutAtSide() {
        return sideSeam == SideSeam.SHAPED || panelWidth.isPresent();
    }

    public boolean has(Pocket.Kind kind) {
        return pockets.stream().anyMatch(p -> p.kind() == kind);
    }

    /** What the things in the pockets add to the girth at a level, mm: at the hip of the whole body, else of one leg. */
    public double bulge(Level.Name level) {
        return switch (level) {
            case HIP -> bulge(Pocket.Kind.HIP_PAD) + bulge(Pocket.Kind.TAILBONE_PAD);
            case CROTCH, MID_THIGH -> bulge(Pocket.Kind.PHONE);
            case KNEE -> bulge(Pocket.Kind.KNEE_PAD) / Pocket.Kind.KNEE_PAD.inAPair();
            case WAIST, CALF, ANKLE, BOOT_TOP, HEM -> 0;
        };
    }

    private double bulge(Pocket.Kind kind) {
        return pockets.stream()
                .filter(p -> p.kind() == kind)
                .mapToDouble(p -> BULGE_PER_THICKNESS * p.thickness() * kind.inAPair())
                .sum();
    }
}
