package stretchwright.lay.nest;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stretchwright.ground.Polygon;

/**
 * A plain layout problem: outlines to be laid on a strip of fixed height and least length, in units of its own.
 *
 * @param stripHeight pieces lie in 0 to stripHeight in y, from 0 on in x
 * @param rotations allowed for every item, degrees counter-clockwise
 */
public record StripInstance(String name, double stripHeight, List<Double> rotations, List<Item> items) {
    /**
     * @param id unique in the instance
     * @param demand copies that must all be placed
     */
    public record Item(String id, int demand, Polygon polygon) {
        public Item {
            if (demand < 1) {
                throw new IllegalArgumentException(id + ": a demand of " + demand + " cannot be laid");
            }
        }

        double area() {
            return polygon.area() * demand;
        }
    }

    public StripInstance {
        rotations = List.copyOf(rotations);
        items = List.copyOf(items);
        if (!(stripHeight > 0) || rotations.isEmpty() || items.isEmpty()) {
            throw new IllegalArgumentException(name + ": a strip needs a height, a rotation and an item");
        }
        Set<String> ids = new HashSet<>();
        for (Item item : items) {
            if (!ids.add(item.id())) {
                throw new IllegalArgumentException(name + ": there are two items " + item.id());
            }
        }
    }

    /** Area of all copies. */
    public double area() {
        return items.stream().mapToDouble(Item::area).sum();
    }
}
