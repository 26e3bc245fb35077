package stretchwright.print.sheets;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Phrases;

/**
 * The squares of gridded pattern cloth, and how finely distances are read on a ruler.
 *
 * @param square side of a square, mm
 * @param step distances are rounded to it, mm
 * @param unit of what is printed
 */
public record TraceGrid(double square, double step, Unit unit) {
    private static final double INCH = 25.4;
    /** Sixteenths are on every inch ruler. */
    private static final int PARTS = 16;

    private static final List<TraceGrid> KNOWN = List.of(
            new TraceGrid(INCH, INCH / PARTS, Unit.IN),
            new TraceGrid(10, 1, Unit.MM),
            new TraceGrid(20, 1, Unit.MM),
            new TraceGrid(50, 1, Unit.MM));

    /** "1 in", "1 cm", "2 cm", "5 cm". */
    public static Optional<TraceGrid> of(String words) {
        return KNOWN.stream()
                .filter(g -> g.name().equals(words.strip().toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    /** One inch for who works in inches, else two centimetres: common practice, no source. */
    public static TraceGrid usual(Unit unit) {
        return of(unit == Unit.IN ? "1 in" : "2 cm").orElseThrow();
    }

    public String name() {
        return unit == Unit.IN ? "1 in" : Amounts.number(square / 10, 0) + " cm";
    }

    double rounded(double mm) {
        return Math.rint(mm / step) * step;
    }

    /** Of a rounded distance: "352 mm", or "13 7/8 in". */
    String said(double mm) {
        if (unit != Unit.IN) {
            return Amounts.number(mm, 0) + " mm";
        }
        return Voice.parts(Math.round(Math.abs(mm) / step), PARTS) + " in";
    }

    /** The same in whole squares and the rest: "17 sq + 12 mm". */
    String squares(double mm) {
        double size = Math.abs(mm);
        long count = (long) Math.floor(size / square + 1e-9);
        double rest = rounded(size - count * square);
        String squares = Phrases.of("trace.squares", String.valueOf(count));
        return rest < step / 2 ? squares : squares + " + " + said(rest);
    }
}
