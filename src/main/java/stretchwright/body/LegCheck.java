package stretchwright.body;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;

/**
 * Judges what was taken on one leg beside the rest of that leg, the trunk and the other leg.
 *
 * <p>Real legs differ by more than surveys of healthy ones know, so a value far off is only doubted. It is a finding
 * where, besides, two of its digits swapped give the other leg's value: that no body explains. Nothing over a socket or
 * brace is judged. Reasons and counts: docs/maths/body.md, section 7.
 */
final class LegCheck {
    /** Two legs that are alike agree within this many differences of two readings (common practice, no source). */
    private static final double ALIKE = 2;

    private final Measured measured;

    private LegCheck(Measured measured) {
        this.measured = measured;
    }

    /** One value that does not go with its own leg. */
    private record Odd(Side side, AtOdds.Odd odd) {}

    /**
     * What the surveys are to judge: the mean of both legs, or where one goes clearly worse with the trunk the other leg;
     * each slip is a finding.
     */
    static Map<Measure, Double> judged(Measured measured, Findings findings) {
        LegCheck check = new LegCheck(measured);
        Map<Measure, Double> judged = new EnumMap<>(Measure.class);
        List<Odd> odd = check.odd(Plausibility.UNUSUAL);
        long left = odd.stream().filter(o -> o.side == Side.LEFT).count();
        long right = odd.size() - left;
        judged.putAll(left == right ? measured.soft() : measured.soft(left < right ? Side.LEFT : Side.RIGHT));
        odd.stream()
                .filter(o -> Math.abs(o.odd.spreadsOff()) > Plausibility.IMPOSSIBLE)
                .forEach(o -> check.slip(o, findings.unit()).ifPresent(slip -> check.report(o, slip, findings)));
        return judged;
    }

    static List<Doubt> doubts(Measured measured) {
        return new LegCheck(measured)
                .odd(Plausibility.UNUSUAL).stream().map(LegCheck::doubt).toList();
    }

    /** Values of one leg beyond the limit where the other leg's stands nearer to what is expected. */
    private List<Odd> odd(double limit) {
        List<Odd> all = new ArrayList<>();
        for (Side side : Side.values()) {
            Map<Measure, Double> leg = new EnumMap<>(Measure.class);
            leg.putAll(measured.soft(side));
            leg.values().removeIf(mm -> !(mm > 0 && Double.isFinite(mm)));
            if (measured.side(side).keySet().stream().noneMatch(leg::containsKey)) {
                continue;
            }
            Known known = Known.of(measured.figure(), measured.age(), leg);
            AtOdds.find(known, odd -> ofThatLeg(side, odd) ? limit : Double.MAX_VALUE)
                    .forEach(odd -> all.add(new Odd(side, odd)));
        }
        return all;
    }

    private boolean ofThatLeg(Side side, AtOdds.Odd odd) {
        Measure measure = odd.measure();
        return measured.side(side).containsKey(measure)
                && !measured.isHard(side, measure)
                && Math.abs(odd.mm() - odd.expected())
                        > Math.abs(mean(other(side), measure) - odd.expected()) + HandMeasuring.repeatLimit(measure);
    }

    private double mean(Side side, Measure measure) {
        Readings readings = measured.side(side).get(measure);
        return readings == null ? Double.NaN : readings.mean();
    }

    private static Side other(Side side) {
        return side == Side.LEFT ? Side.RIGHT : Side.LEFT;
    }

    private Optional<Double> slip(Odd odd, Unit unit) {
        Measure measure = odd.odd.measure();
        if (measured.isHard(other(odd.side), measure)) {
            return Optional.empty();
        }
        double near = mean(other(odd.side), measure);
        return Slip.swapped(odd.odd.mm(), unit).stream()
                .filter(mm -> Math.abs(mm - near) <= ALIKE * HandMeasuring.repeatLimit(measure))
                .findFirst();
    }

    private void report(Odd odd, double slip, Findings findings) {
        Measure measure = odd.odd.measure();
        Side other = other(odd.side);
        findings.add(
                "wearer.measurements." + measure.term() + "." + odd.side.word(),
                Tell.said("leg.at-odds", Tell.taken(odd.odd.mm()), other.said(), Tell.taken(mean(other, measure))),
                Tell.said(
                        "leg.swapped-help",
                        Part.length(odd.odd.expected()),
                        Tell.range(odd.odd.expected(), odd.odd.spread()),
                        Part.length(slip)));
    }

    private static Doubt doubt(Odd odd) {
        AtOdds.Odd o = odd.odd;
        Said message = Tell.said(
                "doubt.leg",
                o.measure().said(),
                Part.length(o.mm()),
                odd.side.said(),
                Tell.range(o.expected(), o.spread()));
        return new Doubt(o.measure(), o.expected(), o.spread(), message);
    }
}
