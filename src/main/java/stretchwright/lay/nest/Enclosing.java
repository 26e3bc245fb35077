package stretchwright.lay.nest;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;

/**
 * An outline with fewer corners round another one, nowhere farther off it than a tolerance: pieces laid by it do not
 * overlap by their true outlines either.
 *
 * <p>Two ways, alternated until neither helps: a corner that points inwards is left out; an edge between two corners
 * that point outwards is left out and its neighbours are drawn on until they meet. Whole units, rounded outwards.
 */
public final class Enclosing {
    private static final class Corner {
        final long x;
        final long y;
        /** How far the edge from this corner on already stands off the true outline. */
        double off;
        /** How far this corner stands off the true outline. */
        final double tip;

        Corner(long x, long y, double off, double tip) {
            this.x = x;
            this.y = y;
            this.off = off;
            this.tip = tip;
        }
    }

    private static final int FEWEST = 4;

    private final double tolerance;
    private List<Corner> corners = new ArrayList<>();

    private Enclosing(Shape shape, double tolerance) {
        this.tolerance = tolerance;
        for (int i = 0; i < shape.corners(); i++) {
            corners.add(new Corner(shape.x[i], shape.y[i], 0, 0));
        }
    }

    static Shape of(Shape shape, double tolerance) {
        return new Enclosing(shape, tolerance).simplified();
    }

    /** The same inside the outline, where it encloses the rest of the plane; the outline itself where that crosses itself. */
    public static Shape inside(Shape shape, double tolerance) {
        Enclosing enclosing = new Enclosing(shape, tolerance);
        Collections.reverse(enclosing.corners);
        Shape inside = enclosing.simplified();
        Geometry simplified = Gaps.geometry(inside.polygon());
        return simplified.isValid() && Gaps.geometry(shape.polygon()).covers(simplified) ? inside : shape;
    }

    private Shape simplified() {
        int before;
        do {
            before = corners.size();
            fill();
            drawOn();
        } while (corners.size() < before);
        return Shape.of(
                corners.stream().mapToLong(c -> c.x).toArray(),
                corners.stream().mapToLong(c -> c.y).toArray());
    }

    /** The parts with enclosing outlines, but where one would no longer have a place across; alike parts stay alike. */
    public static List<Part> all(List<Part> parts, double tolerance) {
        Map<Integer, Part> known = new HashMap<>();
        return parts.stream()
                .map(p -> known.computeIfAbsent(p.kind(), k -> enclosed(p, tolerance)))
                .toList();
    }

    private static Part enclosed(Part part, double tolerance) {
        return new Part(
                part.kind(),
                part.variants().stream()
                        .map(v -> {
                            Shape shape = of(v.exact(), tolerance);
                            Shape fitting = part.across().holds(shape) ? shape : v.exact();
                            return new Part.Variant(v.rotation(), fitting, fitting, v.beat());
                        })
                        .toList(),
                part.across());
    }

    private Corner at(int i) {
        return corners.get(Math.floorMod(i, corners.size()));
    }

    private static double turn(Corner a, Corner b, Corner c) {
        return (double) (b.x - a.x) * (c.y - a.y) - (double) (b.y - a.y) * (c.x - a.x);
    }

    private static double distance(Corner a, Corner b) {
        return Math.hypot(b.x - a.x, b.y - a.y);
    }

    /** Leaves out corners that point inwards or lie on a line, never two neighbours in one pass. */
    private void fill() {
        List<Corner> out = new ArrayList<>();
        boolean left = false;
        for (int i = 0; i < corners.size(); i++) {
            Corner a = at(i - 1);
            Corner b = at(i);
            Corner c = at(i + 1);
            double off = -turn(a, b, c) / distance(a, c) + Math.max(a.off, b.off);
            boolean last = i == corners.size() - 1;
            if (!left
                    && !(last && out.size() < i)
                    && turn(a, b, c) <= 0
                    && off <= tolerance
                    && corners.size() > FEWEST) {
                a.off = Math.max(0, off);
                left = true;
            } else {
                out.add(b);
                left = false;
            }
        }
        if (out.size() >= FEWEST) {
            corners = out;
        }
    }

    /** Leaves out edges between corners that point outwards. */
    private void drawOn() {
        for (int i = 0; i < corners.size() && corners.size() > FEWEST; i++) {
            Corner a = at(i - 1);
            Corner b = at(i);
            Corner c = at(i + 1);
            Corner d = at(i + 2);
            if (turn(a, b, c) <= 0 || turn(b, c, d) <= 0) {
                continue;
            }
            Corner meet = meet(a, b, c, d);
            if (meet != null) {
                corners.set(i, meet);
                corners.remove((i + 1) % corners.size());
            }
        }
    }

    /** The whole point nearest to where a-b and d-c meet that leaves b and c inside; none where that is too far off. */
    private @Nullable Corner meet(Corner a, Corner b, Corner c, Corner d) {
        double abx = b.x - a.x;
        double aby = b.y - a.y;
        double dcx = c.x - d.x;
        double dcy = c.y - d.y;
        double det = abx * dcy - aby * dcx;
        if (det >= 0) {
            return null; // they part
        }
        double s = ((d.x - a.x) * dcy - (d.y - a.y) * dcx) / det;
        double px = a.x + s * abx;
        double py = a.y + s * aby;
        @Nullable Corner best = null;
        double nearest = Double.POSITIVE_INFINITY;
        for (int k = 0; k < 16; k++) {
            long x = (long) Math.floor(px) - 1 + (k & 3);
            long y = (long) Math.floor(py) - 1 + (k >> 2);
            Corner p = new Corner(x, y, c.off, 0);
            double off = turn(b, p, c) / distance(b, c) + b.off + Math.max(b.tip, c.tip);
            boolean holds = turn(a, p, b) >= 0 && turn(p, d, c) >= 0 && turn(a, p, d) > 0;
            double away = Math.hypot(x - px, y - py);
            if (holds && off <= tolerance && away < nearest) {
                best = new Corner(x, y, c.off, off);
                nearest = away;
            }
        }
        return best;
    }
}
