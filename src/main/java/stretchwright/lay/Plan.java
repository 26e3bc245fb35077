package stretchwright.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Grid;
import stretchwright.lay.nest.Layout;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Piece;

/** The cloth spread in one way, one stretch after another along it: one stretch but where it is part folded. */
record Plan(Lay.Method method, List<Spread> spreads) {
    /** Places to fold off the middle that are tried. */
    private static final int FOLDS = 6;

    Plan {
        spreads = List.copyOf(spreads);
    }

    /** The ways of spreading the cloth by this method that are worth trying; a plainer method's where it would be the same. */
    static List<Plan> by(Lay.Method method, List<Piece> pieces, Fabric fabric, LayTerms terms) {
        return switch (method) {
            case FOLDED_OFF_THE_MIDDLE -> offTheMiddle(pieces, fabric, terms);
            case PART_FOLDED -> partFolded(pieces, fabric, terms);
            default -> List.of(new Plan(method, List.of(Spread.of(method, Cut.all(pieces, method), fabric, terms))));
        };
    }

    /** Folded where one double piece just lies, where the widest single one does, and where two double ones do. */
    private static List<Plan> offTheMiddle(List<Piece> pieces, Fabric fabric, LayTerms terms) {
        List<Cut> cuts = Cut.all(pieces, Lay.Method.FOLDED_OFF_THE_MIDDLE);
        long whole = Spread.whole(fabric);
        long gap = Grid.units(terms.gap());
        long[] twice = widths(cuts, 2);
        long[] once = widths(cuts, 1);
        if (twice.length == 0 || once.length == 0) {
            return by(Lay.Method.FOLDED, pieces, fabric, terms);
        }
        long least = LongStream.of(twice).max().orElseThrow();
        LongStream.Builder folds = LongStream.builder();
        folds.add(least);
        folds.add((whole - LongStream.of(once).max().orElseThrow()) / 2);
        for (long one : twice) {
            for (long other : twice) {
                folds.add(one + gap + other);
            }
        }
        List<Plan> plans = folds.build()
                .filter(f -> f >= least && f < whole / 2)
                .distinct()
                .limit(FOLDS)
                .mapToObj(f -> new Plan(
                        Lay.Method.FOLDED_OFF_THE_MIDDLE, List.of(Spread.offTheMiddle(f, cuts, fabric, terms))))
                .toList();
        return plans.isEmpty() ? by(Lay.Method.FOLDED, pieces, fabric, terms) : plans;
    }

    private static long[] widths(List<Cut> cuts, int layers) {
        return cuts.stream()
                .filter(c -> c.layers() == layers)
                .mapToLong(Cut::widthUnits)
                .distinct()
                .toArray();
    }

    /** With the pieces at the fold in the folded stretch, and without; where all goes through as many layers, one stretch. */
    private static List<Plan> partFolded(List<Piece> pieces, Fabric fabric, LayTerms terms) {
        List<Plan> out = new ArrayList<>();
        for (boolean withFoldPieces : new boolean[] {true, false}) {
            List<Cut> folded = Cut.ofFoldedStretch(pieces, withFoldPieces);
            List<Cut> open = Cut.ofOpenStretch(pieces, withFoldPieces);
            List<Spread> spreads = new ArrayList<>();
            if (!folded.isEmpty()) {
                spreads.add(Spread.of(Lay.Method.FOLDED, folded, fabric, terms));
            }
            if (!open.isEmpty()) {
                spreads.add(Spread.of(Lay.Method.OPEN, open, fabric, terms));
            }
            out.add(new Plan(spreads.size() == 2 ? Lay.Method.PART_FOLDED : spreads.get(0).method, spreads));
        }
        return out;
    }

    List<Cut> tooWide() {
        return spreads.stream().flatMap(s -> s.tooWide().stream()).toList();
    }

    /** Of the cloth, mm: twice the spread where it is folded crosswise. */
    double length(List<Layout> layouts) {
        return spread(layouts) * (method == Lay.Method.FOLDED_CROSSWISE ? 2 : 1);
    }

    /** What each stretch needs at least where the whole lay needs so much, mm; of two nothing is known. */
    double least(double length) {
        return spreads.size() > 1 ? 0 : length / (method == Lay.Method.FOLDED_CROSSWISE ? 2 : 1);
    }

    private double spread(List<Layout> layouts) {
        return Grid.snap(IntStream.range(0, spreads.size())
                .mapToDouble(i ->
                        (i == 0 ? 0 : spreads.get(i).gap()) + spreads.get(i).length(layouts.get(i)))
                .sum());
    }

    List<Lay.Placement> placements(List<Layout> layouts) {
        List<Lay.Placement> out = new ArrayList<>();
        double from = 0;
        for (int i = 0; i < spreads.size(); i++) {
            out.addAll(spreads.get(i).placements(layouts.get(i), from));
            from = Grid.snap(from
                    + spreads.get(i).length(layouts.get(i))
                    + spreads.get(i).gap());
        }
        return out;
    }

    /** How far the cloth lies double where the method does not say it, mm. */
    double doubled(List<Layout> layouts) {
        return switch (method) {
            case FOLDED_OFF_THE_MIDDLE -> Grid.mm(spreads.get(0).doubled);
            case PART_FOLDED -> spreads.get(0).length(layouts.get(0));
            default -> 0;
        };
    }

    /** The width of the lay as drawn, mm: of the wider stretch where there are two. */
    double drawnWidth() {
        return Grid.mm(spreads.stream().mapToLong(s -> s.width).max().orElseThrow());
    }

    /** Share of the cloth, in all its layers, that goes into pieces. */
    double use(List<Layout> layouts) {
        double area = spreads.stream()
                .flatMap(s -> s.cuts.stream())
                .mapToDouble(c -> c.outline().area() * c.layers())
                .sum();
        return area / (Grid.mm(wholeWidth()) * length(layouts));
    }

    private long wholeWidth() {
        Spread first = spreads.get(0);
        return switch (first.method) {
            case FOLDED -> 2 * first.width;
            case FOLDED_OFF_THE_MIDDLE -> first.width + first.doubled;
            default -> first.width;
        };
    }
}
