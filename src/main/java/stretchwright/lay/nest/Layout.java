package stretchwright.lay.nest;

import java.util.ArrayList;
import java.util.List;

/** Where the parts lie, each in its variant moved by (x, y); the length is the highest y of any corner. */
public record Layout(List<Spot> spots, long length) {
    public Layout {
        spots = List.copyOf(spots);
    }

    /** The same places for parts free to turn, where the search held some to one turn; in the order of the parts. */
    public Layout of(List<Part> parts) {
        List<Spot> left = new ArrayList<>(spots);
        List<Spot> out = new ArrayList<>();
        for (Part part : parts) {
            Spot spot = left.stream()
                    .filter(s -> s.part.kind() == part.kind())
                    .findFirst()
                    .orElseThrow();
            left.remove(spot);
            int variant = 0;
            while (part.variants().get(variant).rotation() != spot.rotation()) {
                variant++;
            }
            out.add(new Spot(part, variant, spot.x, spot.y, spot.top));
        }
        return new Layout(out, length);
    }

    /** One part in its place; top is the highest y of its box. */
    public record Spot(Part part, int variant, long x, long y, long top) {
        Shape shape(boolean rough) {
            return part.variants().get(variant).shape(rough);
        }

        Shape shape() {
            return shape(false);
        }

        public double rotation() {
            return part.variants().get(variant).rotation();
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
