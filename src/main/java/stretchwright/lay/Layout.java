package stretchwright.lay;

import java.util.List;

/** Where the parts lie, each in its variant moved by (x, y); the length is the highest y of any corner. */
record Layout(List<Spot> spots, long length) {
    Layout {
        spots = List.copyOf(spots);
    }

    /** One part in its place; top is the highest y of its box. */
    record Spot(Part part, int variant, long x, long y, long top) {
        Shape shape(boolean rough) {
            return part.variants().get(variant).shape(rough);
        }

        Shape shape() {
            return shape(false);
        }

        /** Lower first, then farther left. */
        boolean betterThan(Spot other) {
            return top != other.top ? top < other.top : left() < other.left();
        }

        private long left() {
            return x + shape().minX;
        }
    }
}
