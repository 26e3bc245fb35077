package stretchwright.lay.nest;

import java.util.List;

/**
 * Something to be placed once, in one of its variants.
 *
 * @param kind parts of one kind are alike; swapping them changes nothing
 * @param variants the ways it may be turned
 * @param across where it may lie across the strip
 */
public record Part(int kind, List<Variant> variants, Across across) {
    public Part {
        variants = List.copyOf(variants);
    }

    /**
     * @param exact the true outline
     * @param rough the outline with fewer corners, for choosing among orders
     * @param beat the heights at which it may lie
     */
    public record Variant(double rotation, Shape exact, Shape rough, Beat beat) {
        /** Below this many corners nothing is gained by leaving some out. */
        private static final int FEW_CORNERS = 24;

        public static Variant of(double rotation, Shape exact, double tolerance) {
            return of(rotation, exact, tolerance, Beat.FREE);
        }

        public static Variant of(double rotation, Shape exact, double tolerance, Beat beat) {
            Shape rough = exact.corners() <= FEW_CORNERS ? exact : exact.simplified(tolerance);
            return new Variant(rotation, exact, rough, beat);
        }

        Shape shape(boolean rough) {
            return rough ? this.rough : exact;
        }
    }

    double area() {
        return variants.get(0).exact().area();
    }

    long width() {
        return variants.get(0).exact().width();
    }

    long height() {
        return variants.get(0).exact().height();
    }
}
