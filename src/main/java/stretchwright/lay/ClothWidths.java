package stretchwright.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Findings;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Style;

/** The same garment laid on cloths of several widths, each one-way and turned: to know before buying. */
public record ClothWidths(List<Row> rows) {
    /** Usable widths often sold beside one's own, mm: common practice, no source. */
    static final List<Double> COMMON = List.of(1400.0, 1600.0);

    /** Widths nearer to each other than this are one, mm. */
    private static final double SAME = 10;

    public ClothWidths {
        rows = List.copyOf(rows);
    }

    /**
     * One width; what to buy is empty where the pieces do not fit on it.
     *
     * @param own the width of the make's own cloth, not a common one
     * @param oneWay every piece the same way up
     * @param turned pieces may be turned by half a turn
     */
    public record Row(double width, boolean own, Optional<Buying> oneWay, Optional<Buying> turned) {}

    public static ClothWidths of(
            List<Piece> pieces, Fabric fabric, Style.LayWay way, long seed, Buying.Counter counter) {
        List<Row> rows = new ArrayList<>();
        rows.add(row(fabric.usableWidth(), true, pieces, fabric, way, seed, counter));
        for (double width : COMMON) {
            if (Math.abs(width - fabric.usableWidth()) > SAME) {
                rows.add(row(width, false, pieces, fabric, way, seed, counter));
            }
        }
        return new ClothWidths(rows);
    }

    private static Row row(
            double width,
            boolean own,
            List<Piece> pieces,
            Fabric fabric,
            Style.LayWay way,
            long seed,
            Buying.Counter counter) {
        Optional<Buying> oneWay = buying(pieces, OtherCloth.of(fabric, width, true), way, seed, counter);
        Optional<Buying> free = buying(pieces, OtherCloth.of(fabric, width, false), way, seed, counter);
        // a lay with nothing turned will do where pieces may be turned; the search need not find it there
        Optional<Buying> turned =
                Stream.of(free, oneWay).flatMap(Optional::stream).min(Comparator.comparingDouble(Buying::needed));
        return new Row(width, own, oneWay, turned);
    }

    private static Optional<Buying> buying(
            List<Piece> pieces, Fabric cloth, Style.LayWay way, long seed, Buying.Counter counter) {
        return Laying.lay(pieces, cloth, way, seed, new Findings("trial"))
                .map(lay -> Buying.of(lay.length(), cloth, counter));
    }
}
