package stretchwright.lay;

import java.util.List;

/**
 * Something to be placed once, in one of its variants.
 *
 * @param kind parts of one kind are alike; swapping them changes nothing
 * @param variants the ways it may be turned
 * @param atFold it lies with its own x = 0 on the edge of the cloth at x = 0
 */
record Part(int kind, List<Variant> variants, boolean atFold) {
    Part {
        variants = List.copyOf(variants);
    }

    /**
     * @param exact the true outline
     * @param rough the outline with fewer corners, for choosing among orders
     */
    record Variant(double rotation, Shape exact, Shape rough) {
        /** Below this many corners nothing is gained by leaving some out. */
        private static final int FEW_CORNERS = 24;

        static Variant of(double rotation, Shape exact, double tolerance) {
            return new Variant(rotation, exact, exact.corners() <= FEW_CORNERS ? exact : exact.simplified(tolerance));
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
