package stretchwright.sewing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stretchwright.pattern.Stitch;

/**
 * How much thread a seam takes: by published ratio, by unpicking a sample, or by published formula.
 *
 * <p>Ratios (cm of thread per cm of seam) and the 15 % for waste: a thread maker's table as generally published
 * (trade-values section 4.1, sources S15; its value for 514 is printed for 512). Formulas: inches of thread per inch of
 * seam, T the thickness of the seam and W the width of the stitch in inches, S stitches per inch (S15b, S15c).
 */
final class ThreadUse {
    static final double WASTE = 0.15;

    private ThreadUse() {}

    /** Thread per seam length, before waste. */
    static double ratio(Stitch stitch) {
        return switch (stitch) {
            case LOCKSTITCH -> 2.5;
            case ZIGZAG -> 7.0;
            case CHAINSTITCH -> 5.5;
            case COVERSTITCH, OVERLOCK_4 -> 18.0;
            case OVERLOCK_3 -> 14.0;
            case BACKSTITCH_BY_HAND -> backstitch(3.0, 1.2);
        };
    }

    /**
     * No ratio is published for a backstitch; from its geometry: under by two stitches, back on top by one, and twice
     * through the cloth, for each stitch of advance. Lengths in mm.
     */
    static double backstitch(double stitchLength, double thickness) {
        return 3 + 2 * thickness / stitchLength;
    }

    /** Share of the thread that runs through the needles; the rest through bobbin or loopers. */
    static double needleShare(Stitch stitch) {
        return switch (stitch) {
            case LOCKSTITCH, ZIGZAG -> 0.50;
            case CHAINSTITCH, OVERLOCK_4 -> 0.25;
            case COVERSTITCH -> 0.30;
            case OVERLOCK_3 -> 0.20;
            case BACKSTITCH_BY_HAND -> 1.0;
        };
    }

    /**
     * Where the threads of a stitch run, and the share of each in the whole. Needles share alike, and so do the two loopers
     * of an overlock: the published ratios tell needle from under thread only.
     */
    static Map<Threading, Double> positions(Stitch stitch) {
        double needle = needleShare(stitch);
        double under = 1 - needle;
        Map<Threading, Double> out = new LinkedHashMap<>();
        switch (stitch) {
            case LOCKSTITCH, ZIGZAG -> {
                out.put(Threading.NEEDLE, needle);
                out.put(Threading.BOBBIN, under);
            }
            case CHAINSTITCH -> {
                out.put(Threading.NEEDLE, needle);
                out.put(Threading.LOOPER, under);
            }
            case COVERSTITCH -> {
                out.put(Threading.LEFT_NEEDLE, needle / 2);
                out.put(Threading.RIGHT_NEEDLE, needle / 2);
                out.put(Threading.LOOPER, under);
            }
            case OVERLOCK_3 -> {
                out.put(Threading.NEEDLE, needle);
                out.put(Threading.UPPER_LOOPER, under / 2);
                out.put(Threading.LOWER_LOOPER, under / 2);
            }
            case OVERLOCK_4 -> {
                out.put(Threading.LEFT_NEEDLE, needle / 2);
                out.put(Threading.RIGHT_NEEDLE, needle / 2);
                out.put(Threading.UPPER_LOOPER, under / 2);
                out.put(Threading.LOWER_LOOPER, under / 2);
            }
            case BACKSTITCH_BY_HAND -> out.put(Threading.NEEDLE, needle);
        }
        return out;
    }

    /** Metres of one thread, from cone or spool, for all operations on its machine; by machine, then as they are threaded. */
    static List<SewingPlan.Thread> perPosition(List<SewingPlan.Operation> operations, SewingTerms terms, int pairs) {
        Map<Place, Map<Threading, Double>> sums = new LinkedHashMap<>();
        for (SewingPlan.Operation o : operations) {
            o.stitch().ifPresent(stitch -> {
                Map<Threading, Double> here = sums.computeIfAbsent(o.place(), m -> new LinkedHashMap<>());
                double all = metres(stitch, o.length());
                positions(stitch).forEach((position, share) -> here.merge(position, share * all, Double::sum));
            });
        }
        List<SewingPlan.Thread> out = new ArrayList<>();
        sums.forEach((machine, positions) ->
                positions.forEach((position, metres) -> out.add(thread(machine, position, pairs * metres, terms))));
        return out;
    }

    private static SewingPlan.Thread thread(Place machine, Threading position, double metres, SewingTerms terms) {
        boolean spool = machine == Place.LOCKSTITCH || machine == Place.HAND;
        return SewingPlan.Thread.of(machine, position, metres, spool ? terms.spool() : terms.cone());
    }

    /** Metres for a seam length in mm, waste included. */
    static double metres(Stitch stitch, double seamLength) {
        return seamLength / 1000 * ratio(stitch) * (1 + WASTE);
    }

    /** Metres per machine, in the order of first use, rounded to 0.1 m. */
    static Map<Place, Double> perMachine(List<SewingPlan.Operation> operations) {
        Map<Place, Double> sums = new LinkedHashMap<>();
        for (SewingPlan.Operation operation : operations) {
            operation
                    .stitch()
                    .ifPresent(
                            stitch -> sums.merge(operation.place(), metres(stitch, operation.length()), Double::sum));
        }
        sums.replaceAll((machine, metres) -> Math.round(metres * 10) / 10.0);
        return sums;
    }

    /** Thread for a seam, before waste, from threads unpicked out of a sample of it; all in one unit. */
    static double byUnpicking(double seam, double sample, double... unpicked) {
        double sum = 0;
        for (double thread : unpicked) {
            sum += seam * thread / sample;
        }
        return sum;
    }

    /** Inches of thread per inch of seam by the published formula for an ISO 4915 number. */
    static double byFormula(int stitch, double thickness, double width, double perInch) {
        double t = thickness;
        double w = width;
        double s = perInch;
        return switch (stitch) {
            case 101 -> 3 + 2 * t * s;
            case 301 -> 2 + 2 * t * s;
            case 401 -> 4 + 2 * t * s;
            case 406 -> 7 + 2 * s * (t + w);
            case 407 -> 9 + 2 * s * (3 * t + w);
            case 504 -> 5 + 4 * s * (w + t);
            case 514 -> 5 + 2 * s * (3 * t + 2 * w);
            case 516 -> 9 + 2 * s * (2 * w + 3 * t);
            case 602 -> 8 + s * (5 * w + 4 * t);
            case 605 -> 10 + 2 * s * (2 * w + 3 * t);
            case 607 -> 12 + 4 * s * (w + 2 * t);
            default -> throw new IllegalArgumentException("no published formula for stitch " + stitch);
        };
    }

    /** The other published formula for 504 (S15c): 2 in per inch less than the first. */
    static double overedgeByTheOtherFormula(double thickness, double width, double perInch) {
        return 3 + 4 * width * perInch + 4 * thickness * perInch;
    }
}
