package stretchwright.body;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** Whether readings agree with each other, left with right, and each leg with itself, before bodies are asked. */
final class TakenCheck {
    private static final String KEY = "wearer.measurements.";

    /** One leg half of the other is a girth measured flat, or a slip of the pen (common practice, no source). */
    private static final double HALF = 0.5;

    private final Measured measured;
    private final Findings findings;
    private boolean clean = true;

    private TakenCheck(Measured measured, Findings findings) {
        this.measured = measured;
        this.findings = findings;
    }

    /** Whether nothing was found. */
    static boolean pass(Measured measured, Findings findings) {
        TakenCheck check = new TakenCheck(measured, findings);
        measured.whole().forEach((measure, readings) -> check.agree(KEY + measure.term(), measure, readings));
        for (Side side : Side.values()) {
            measured.side(side).forEach((measure, readings) -> check.agree(key(side, measure), measure, readings));
        }
        measured.side(Side.LEFT).keySet().forEach(check::sides);
        check.hard();
        return check.clean;
    }

    /** Heights and girths of each leg by itself; only where the legs were measured apart. */
    static boolean legsInOrder(Measured measured, Findings findings) {
        TakenCheck check = new TakenCheck(measured, findings);
        for (Side side : Side.values()) {
            Map<Measure, Double> leg = new EnumMap<>(measured.soft(side));
            for (List<Measure> pair : HeightOrder.PAIRS) {
                boolean apart = pair.stream().anyMatch(measured.side(side)::containsKey);
                Double low = leg.get(pair.get(0));
                Double high = leg.get(pair.get(1));
                if (apart && low != null && high != null && low >= high) {
                    Measure wrong = measured.side(side).containsKey(pair.get(0)) ? pair.get(0) : pair.get(1);
                    Measure other = wrong == pair.get(0) ? pair.get(1) : pair.get(0);
                    boolean below = wrong == pair.get(0);
                    Part[] parts = {Tell.taken(below ? low : high), other.said(), Tell.taken(below ? high : low)};
                    check.report(
                            key(side, wrong),
                            below ? Tell.said("leg.not-below", parts) : Tell.said("leg.not-above", parts),
                            Tell.said("leg.order-help"));
                }
            }
        }
        return check.clean;
    }

    private void agree(String key, Measure measure, Readings readings) {
        clean &= readings.agree(key, measure, findings);
    }

    private void sides(Measure measure) {
        Readings left = measured.side(Side.LEFT).get(measure);
        Readings right = measured.side(Side.RIGHT).get(measure);
        if (left == null
                || right == null
                || measured.isHard(Side.LEFT, measure)
                || measured.isHard(Side.RIGHT, measure)) {
            return;
        }
        boolean lengths = usable(left.mean()) && usable(right.mean());
        for (Side side : Side.values()) {
            double mm = (side == Side.LEFT ? left : right).mean();
            if (!usable(mm)) {
                noLength(side, measure, mm);
            }
        }
        double larger = Math.max(left.mean(), right.mean());
        if (lengths && Math.abs(left.mean() - right.mean()) >= HALF * larger) {
            report(
                    KEY + measure.term(),
                    Tell.said("sides.differ", Tell.taken(left.mean()), Tell.taken(right.mean())),
                    Tell.said("sides.differ-help"));
        }
    }

    /** What lies over a socket or brace is not judged by bodies, but it must be there and be a length. */
    private void hard() {
        measured.hard()
                .forEach((side, girths) -> girths.forEach(measure -> {
                    Readings readings = measured.side(side)
                            .getOrDefault(measure, measured.whole().get(measure));
                    if (!measure.roundLeg()) {
                        report(
                                "wearer.hard." + side.word(),
                                Tell.said("hard.not-round", measure.said()),
                                Tell.said("hard.not-round-help"));
                    } else if (readings == null) {
                        report(
                                "wearer.hard." + side.word(),
                                Tell.said("hard.missing", measure.said()),
                                Tell.said("hard.missing-help"));
                    } else if (!usable(readings.mean())) {
                        noLength(side, measure, readings.mean());
                    }
                }));
    }

    private void noLength(Side side, Measure measure, double mm) {
        report(key(side, measure), Tell.said("measure.no-length", Tell.taken(mm)), Tell.said("leg.no-length-help"));
    }

    private static boolean usable(double mm) {
        return mm > 0 && Double.isFinite(mm);
    }

    private static String key(Side side, Measure measure) {
        return KEY + measure.term() + "." + side.word();
    }

    private void report(String key, Said problem, Said remedy) {
        clean = false;
        findings.add(key, problem, remedy);
    }
}
