package stretchwright.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Findings;
import stretchwright.lay.nest.LayClock;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Piece;

/**
 * The same garment laid on cloths of several widths, each one-way and turned: to know before buying. The make's own
 * cloth is laid as the make itself lays it, so that both say the same; the others are estimated.
 */
public record ClothWidths(List<Row> rows) {
    /** Usable widths often sold beside one's own, mm, narrowest first: common practice, no source. */
    static final List<Double> COMMON = List.of(1400.0, 1600.0);

    /** The same, where one of those is one's own. */
    private static final double BETWEEN = 1500;

    /** Widths nearer to each other than this are one, mm. */
    private static final double SAME = 10;

    public ClothWidths {
        rows = List.copyOf(rows);
    }

    /**
     * One width; what to buy is empty where the pieces do not fit on it.
     *
     * @param own the width of the make's own cloth, not a common one nor one that was assumed
     * @param oneWay every piece the same way up
     * @param turned pieces may be turned by half a turn
     */
    public record Row(double width, boolean own, Optional<Buying> oneWay, Optional<Buying> turned) {}

    /** Lengths of lays, mm. */
    private record Lengths(OptionalDouble oneWay, OptionalDouble turned) {
        /** A lay with nothing turned will do where pieces may be turned; the search need not find it there. */
        static Lengths of(OptionalDouble oneWay, OptionalDouble free) {
            return new Lengths(oneWay, least(oneWay, free));
        }

        /** A lay on narrower cloth lies on this one too. */
        Lengths atMost(Lengths narrower) {
            return new Lengths(least(oneWay, narrower.oneWay), least(turned, narrower.turned));
        }

        private static OptionalDouble least(OptionalDouble a, OptionalDouble b) {
            return DoubleStream.concat(a.stream(), b.stream()).min();
        }
    }

    /** @param clock may end the searches: then by the lays found until then */
    public static ClothWidths of(
            List<Piece> pieces, Fabric fabric, LayTerms terms, long seed, Buying.Counter counter, LayClock clock) {
        double ownWidth = fabric.roll().usableWidth();
        List<Double> widths = widths(ownWidth);
        // the widths know nothing of each other and may be laid side by side
        List<Lengths> laid = IntStream.range(0, widths.size())
                .parallel()
                .mapToObj(i -> i == 0
                        ? own(pieces, fabric, terms, seed, clock)
                        : quick(pieces, fabric, widths.get(i), terms, seed, clock))
                .toList();
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < widths.size(); i++) {
            Lengths lengths = laid.get(i);
            for (int j = 0; j < widths.size() && i > 0; j++) {
                lengths = widths.get(j) < widths.get(i) ? lengths.atMost(laid.get(j)) : lengths;
            }
            rows.add(row(widths.get(i), i == 0 && !fabric.usual().width(), lengths, fabric, counter));
        }
        return new ClothWidths(rows);
    }

    /** The own width first, then others, narrowest first. */
    private static List<Double> widths(double own) {
        List<Double> others =
                COMMON.stream().filter(w -> Math.abs(w - own) > SAME).toList();
        return others.size() == COMMON.size()
                ? Stream.concat(Stream.of(own), others.stream()).toList()
                : Stream.concat(
                                Stream.of(own),
                                Stream.concat(others.stream(), Stream.of(BETWEEN))
                                        .sorted())
                        .toList();
    }

    private static Lengths quick(
            List<Piece> pieces, Fabric fabric, double width, LayTerms terms, long seed, LayClock clock) {
        return Lengths.of(
                Laying.estimate(pieces, fabric.with(width, true), terms, seed, clock),
                Laying.estimate(pieces, fabric.with(width, false), terms, seed, clock));
    }

    private static Lengths own(List<Piece> pieces, Fabric fabric, LayTerms terms, long seed, LayClock clock) {
        OptionalDouble made = Laying.lay(pieces, fabric, terms, seed, clock, new Findings("trial"))
                .map(lay -> OptionalDouble.of(lay.length()))
                .orElse(OptionalDouble.empty());
        OptionalDouble other = Laying.estimate(
                pieces,
                fabric.with(fabric.roll().usableWidth(), !fabric.roll().oneWay())
                        .with(fabric.roll().shape()),
                terms,
                seed,
                clock);
        return fabric.roll().oneWay() ? Lengths.of(made, other) : Lengths.of(other, made);
    }

    private static Row row(double width, boolean own, Lengths lengths, Fabric fabric, Buying.Counter counter) {
        return new Row(
                width, own, buying(lengths.oneWay(), fabric, counter), buying(lengths.turned(), fabric, counter));
    }

    private static Optional<Buying> buying(OptionalDouble length, Fabric fabric, Buying.Counter counter) {
        return length.isPresent() ? Optional.of(Buying.of(length.getAsDouble(), fabric, counter)) : Optional.empty();
    }
}
