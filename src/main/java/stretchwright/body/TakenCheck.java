package stretchwright.body;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stretchwright.ground.Findings;

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
                    check.report(
                            key(side, wrong),
                            String.format(
                                    Locale.ROOT,
                                    "%s mm is not %s the %s of %s mm on that side.",
                                    Remedy.plain(wrong == pair.get(0) ? low : high),
                                    wrong == pair.get(0) ? "below" : "above",
                                    other.term(),
                                    Remedy.plain(wrong == pair.get(0) ? high : low)),
                            "Measure both again on that leg.");
                }
            }
        }
        return check.clean;
    }

    private void agree(String key, Measure measure, Readings readings) {
        double limit = HandMeasuring.repeatLimit(measure);
        double difference = readings.most() - readings.least();
        if (difference > limit + 1e-9) {
            report(
                    key,
                    String.format(
                            Locale.ROOT,
                            "the readings %s and %s mm differ by %s mm.",
                            Remedy.plain(readings.least()),
                            Remedy.plain(readings.most()),
                            Remedy.plain(difference)),
                    String.format(
                            Locale.ROOT,
                            "Careful readings differ by no more than %.0f mm; measure again and keep the ones that agree.",
                            limit));
        }
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
                    String.format(
                            Locale.ROOT,
                            "left %s mm and right %s mm differ by half or more.",
                            Remedy.plain(left.mean()),
                            Remedy.plain(right.mean())),
                    "Was one of them measured flat, or in another unit? A hard socket or brace is named under"
                            + " wearer.hard.");
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
                                "the " + measure.term() + " does not go round a leg.",
                                "Only girths of the leg and heel can lie over a hard socket or brace.");
                    } else if (readings == null) {
                        report(
                                "wearer.hard." + side.word(),
                                "the " + measure.term() + " is not among the measurements.",
                                "Measure it over the socket or brace and give it under wearer.measurements.");
                    } else if (!usable(readings.mean())) {
                        noLength(side, measure, readings.mean());
                    }
                }));
    }

    private void noLength(Side side, Measure measure, double mm) {
        report(key(side, measure), Remedy.plain(mm) + " mm is no length.", "A length above zero is needed.");
    }

    private static boolean usable(double mm) {
        return mm > 0 && Double.isFinite(mm);
    }

    private static String key(Side side, Measure measure) {
        return KEY + measure.term() + "." + side.word();
    }

    private void report(String key, String problem, String remedy) {
        clean = false;
        findings.add(key, problem, remedy);
    }
}
