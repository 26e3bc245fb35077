package stretchwright.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Grid;
import stretchwright.ground.Point;
import stretchwright.ground.RandomStream;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Style;

/**
 * The length of a lay on cloth that is not bought yet: bottom-left as in Laying, with a fraction of its search and
 * without floor and check. It is the length of a whole lay of the true outlines, as a rule a little longer than what
 * Laying finds (docs/maths/lay.md, What to buy).
 */
final class QuickLay {
    /** As in Laying: corners left out stand off no more than this, in units of 0.01 mm. */
    private static final double ROUGH = 50;
    /** Positions and pairs tried while choosing among orders: about a quarter of what a lay to cut by gets. */
    private static final long BUDGET = 40_000;

    private QuickLay() {}

    /** mm, of the shorter of the permitted ways; empty where a piece is too wide for each. */
    static OptionalDouble length(List<Piece> pieces, Fabric fabric, Style.LayWay way, long seed) {
        Stream<Lay.Method> ways = switch (way) {
            case FOLDED -> Stream.of(Lay.Method.FOLDED);
            case OPEN -> Stream.of(Lay.Method.OPEN);
            case ANY -> Stream.of(Lay.Method.FOLDED, Lay.Method.OPEN);
        };
        return ways.flatMapToDouble(m -> length(pieces, fabric, m, seed).stream())
                .min();
    }

    private static OptionalDouble length(List<Piece> pieces, Fabric fabric, Lay.Method method, long seed) {
        List<Part> parts = parts(Cut.all(pieces, method), method, fabric.oneWay());
        long width = Laying.width(fabric, method);
        if (parts.stream().anyMatch(p -> p.width() > width)) {
            return OptionalDouble.empty();
        }
        Orders orders = new Orders(width, true, 1, BUDGET, () -> false, layout -> {});
        BottomLeft exact = new BottomLeft(width, false);
        return orders.search(parts, new RandomStream(seed)).stream()
                .map(found -> exact.lay(found.order(), Long.MAX_VALUE))
                .min(Comparator.comparingLong(Layout::length))
                .map(layout -> OptionalDouble.of(Grid.mm(layout.length())))
                .orElseThrow();
    }

    /** Cuttings that are alike share one part: swapping them changes nothing. */
    private static List<Part> parts(List<Cut> cuts, Lay.Method method, boolean oneWay) {
        List<Part> out = new ArrayList<>();
        for (Cut cut : cuts) {
            int kind = 0;
            while (!cuts.get(kind).outline().equals(cut.outline())) {
                kind++;
            }
            boolean turns = !oneWay && !(method == Lay.Method.FOLDED && cut.atFold());
            out.add(kind < out.size() ? out.get(kind) : new Part(kind, variants(cut, turns), cut.atFold()));
        }
        return out;
    }

    private static List<Part.Variant> variants(Cut cut, boolean turns) {
        Part.Variant asDrawn = Part.Variant.of(0, Shape.of(cut.outline()), ROUGH);
        return turns
                ? List.of(
                        asDrawn, Part.Variant.of(180, Shape.of(cut.outline().placed(false, 180, Point.ORIGIN)), ROUGH))
                : List.of(asDrawn);
    }
}
