package stretchwright.fabric;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Chance;
import stretchwright.ground.RandomStream;

/**
 * Do ranges keep what they promise? Synthetic garments whose truth is not the model's: load curves of three other shapes, cloth that
 * is held along and narrows, gives way when worn, tape and scissors that err, a body that is no cylinder. The program sees stretch
 * and weight of the cloth, one weight on the strip, or three, the strip's width, a strip along, the way back. Verified
 * mathematics, no forecast proven on worn garments.
 */
class CalibrationTest {
    private static final int GARMENTS = 10_000;

    /** N/m of a weight in grams on the strip. */
    private static double pull(double grams) {
        return grams / 1000 * 9.80665 / LoadCurve.STRIP_WIDTH;
    }

    private enum Known {
        HAND_STRETCH,
        ONE_WEIGHT(500),
        THREE_WEIGHTS(100, 250, 500),
        AND_WIDTH(100, 250, 500),
        AND_ALONG(100, 250, 500),
        AND_WAY_BACK(100, 250, 500),
        AND_HALF_AN_HOUR(100, 250, 500);

        private final double[] grams;

        Known(double... grams) {
            this.grams = grams;
        }
    }

    /**
     * A cloth: T = F shape(e / S), its shape none of the program's but with the same doubt about the bend; a strip along pulls so many
     * times as hard, worn it pulls back times relaxed as hard.
     */
    private record Cloth(
            int shape,
            double f,
            double s,
            double weight,
            double bend,
            double narrowing,
            double lengthwise,
            double back,
            double relaxed) {
        static Cloth of(RandomStream random) {
            double weight = random.between(180, 320);
            double f = 150 * weight / 250 * Math.exp(0.60 * random.nextGaussian());
            double k = Math.max(0.02, 1.15 + 0.5 * random.nextGaussian());
            double quarter = Math.expm1(k / 4) / Math.expm1(k);
            double narrowing = Math.max(0, 0.3 + 0.15 / 1.2816 * random.nextGaussian());
            return new Cloth(
                    random.below(3),
                    f,
                    random.between(0.4, 1.0),
                    weight,
                    quarter,
                    narrowing,
                    Math.exp(0.2 * random.nextGaussian()),
                    0.77 / 0.92 * Math.exp(0.115 * random.nextGaussian()),
                    0.92 * Math.exp(0.07 * random.nextGaussian()));
        }

        /** Each shape gives the same pull at a quarter of the stretch: a power; a straight and a cubic part; a stiff start and a square. */
        double tension(double e) {
            double x = Math.max(0, e / s);
            double a = (bend - 0.015625) / 0.234375;
            double start = -Math.expm1(-6 * x) / -Math.expm1(-6);
            double early = -Math.expm1(-1.5) / -Math.expm1(-6);
            double b = Math.max(0, (bend - 0.0625) / (early - 0.0625));
            return f
                    * switch (shape) {
                        case 0 -> Math.pow(x, Math.log(bend) / Math.log(0.25));
                        case 1 -> a * x + (1 - a) * x * x * x;
                        default -> b * start + (1 - b) * x * x;
                    };
        }

        double extension(double pull) {
            double low = 0;
            double high = 5;
            for (int i = 0; i < 60; i++) {
                double middle = (low + high) / 2;
                if (tension(middle) < pull) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return low;
        }

        /** Held along as well, Tx = T + nu Ty (docs/maths/balance.md); the cloth along, not free to narrow, is stiffer than its strip. */
        double heldAlong(double across, double along) {
            double share = 1 - narrowing * narrowing * lengthwise;
            return tension(across) + narrowing * lengthwise * tension((along + narrowing * across) / share);
        }
    }

    /** What the program is told of the cloth, with the errors of a strip and a ruler. */
    private static Fabric told(Cloth cloth, Known known, RandomStream random) {
        double stretch = cloth.s + 0.01 * random.nextGaussian();
        LoadCurve assumed = LoadCurve.assumed(stretch, OptionalDouble.of(cloth.weight));
        LoadCurve across = assumed;
        LoadCurve along = assumed;
        Hung.Way way = Hung.Way.NOTHING;
        if (known != Known.HAND_STRETCH) {
            double strip = Math.exp(0.05 * random.nextGaussian());
            across = hung(cloth, strip, known.grams, random);
            way = way(cloth, strip, across, known, random);
        }
        if (known.compareTo(Known.AND_ALONG) >= 0) {
            along = hung(cloth, cloth.lengthwise * Math.exp(0.05 * random.nextGaussian()), known.grams, random);
        }
        return SampleFabric.heavyKnit()
                .with(new Fabric.Test(
                        stretch,
                        stretch,
                        across,
                        along,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Fabric.Assumed.NOTHING,
                        new Hung(way, Hung.Way.NOTHING)));
    }

    private static double read(double extension, RandomStream random) {
        return Math.round(100 * (extension + 0.01 * random.nextGaussian())) / 100.0;
    }

    private static LoadCurve hung(Cloth cloth, double strip, double[] grams, RandomStream random) {
        List<LoadCurve.Reading> readings = new ArrayList<>();
        for (double g : grams) {
            double e = read(cloth.extension(pull(g) / strip), random);
            double before =
                    readings.isEmpty() ? 0 : readings.get(readings.size() - 1).extension();
            readings.add(new LoadCurve.Reading(Math.max(before + 0.01, e), pull(g)));
        }
        return LoadCurve.through(readings);
    }

    /** Width to 1 mm under 500 g; lengths under 250 and 100 g on the way back; where it crept to in half an hour. */
    private static Hung.Way way(Cloth cloth, double strip, LoadCurve across, Known known, RandomStream random) {
        OptionalDouble narrowing = OptionalDouble.empty();
        OptionalDouble back = OptionalDouble.empty();
        OptionalDouble relaxed = OptionalDouble.empty();
        if (known.compareTo(Known.AND_WIDTH) >= 0) {
            double stretched = cloth.extension(pull(500) / strip);
            double width = Math.round(50 * (1 - cloth.narrowing * stretched) + random.nextGaussian());
            narrowing = OptionalDouble.of(Math.max(0, Hung.narrowing(width, across.lastExtension())));
        }
        if (known.compareTo(Known.AND_WAY_BACK) >= 0) {
            List<LoadCurve.Reading> readings = new ArrayList<>();
            for (double g : new double[] {250, 100}) {
                double e = Math.max(0.01, read(cloth.extension(pull(g) / strip / cloth.back), random));
                readings.add(new LoadCurve.Reading(e, pull(g)));
            }
            back = OptionalDouble.of(Hung.wayBack(across, readings));
        }
        if (known.compareTo(Known.AND_HALF_AN_HOUR) >= 0) {
            double crept = read(cloth.extension(pull(500) / strip / cloth.relaxed), random);
            relaxed = OptionalDouble.of(Hung.relaxed(across, Math.max(0.01, crept)));
        }
        return new Hung.Way(narrowing, back, relaxed);
    }

    private record Covered(double eight, double nine, double error, double highOverLow) {}

    private static Covered covered(Known known) {
        int eight = 0;
        int nine = 0;
        double squares = 0;
        List<Double> widths = new ArrayList<>();
        for (int i = 0; i < GARMENTS; i++) {
            RandomStream random = RandomStream.of(i, "calibration " + known);
            Cloth cloth = Cloth.of(random);
            Fabric fabric = told(cloth, known, random);
            LoadCurve curve = fabric.test().loadAcross();
            double girth = random.between(200, 560);
            double tape = (girth < 400 ? 5 : 8) / 2.8;
            double taken = girth + tape * random.nextGaussian();
            double planned = Math.min(random.between(0.06, 0.25), cloth.s / 3);
            planned = known == Known.HAND_STRETCH ? planned : Math.min(planned, curve.lastExtension());
            double width = taken / (1 + planned) + 2 * random.nextGaussian();
            double along = random.between(0.02, 0.06);
            double truth = Laplace.kilopascals(cloth.heldAlong(girth / width - 1, along), girth)
                    / (1 + along)
                    * cloth.back
                    * cloth.relaxed
                    * Math.exp(0.05 * random.nextGaussian() + 0.20 * random.nextGaussian());
            double perTension = Laplace.kilopascals(1 / (1 + along), taken);
            double spread = PressureSpread.strain(planned, taken, tape);
            AsWorn asWorn = AsWorn.of(fabric, along);
            PressureSpread ranges = new PressureSpread(asWorn);
            Likely inEight = ranges.within(Chance.EIGHT_IN_TEN, planned, spread, perTension);
            Likely inNine = ranges.within(Chance.NINE_IN_TEN, planned, spread, perTension);
            eight += holds(inEight, truth) ? 1 : 0;
            nine += holds(inNine, truth) ? 1 : 0;
            squares += square(Math.log(perTension * asWorn.tension(planned) / truth));
            widths.add(inEight.pressureHigh() / inEight.pressureLow());
        }
        widths.sort(null);
        return new Covered(
                eight / (double) GARMENTS,
                nine / (double) GARMENTS,
                Math.sqrt(squares / GARMENTS),
                widths.get(GARMENTS / 2));
    }

    private static boolean holds(Likely range, double truth) {
        return truth >= range.pressureLow() && truth <= range.pressureHigh();
    }

    private static double square(double x) {
        return x * x;
    }

    /** 76 to 84 and 86 to 93 in 100, and the figures of the notes are these. */
    @Tag("slow")
    @Test
    void theRangesHoldWhatTheyPromise() throws IOException {
        String notes = Files.readString(Path.of("docs/maths/fit.md"));
        List<String> rows = new ArrayList<>();
        List<Covered> all = new ArrayList<>();
        for (Known known : Known.values()) {
            Covered c = covered(known);
            String row = String.format(
                    Locale.ROOT,
                    "| %s | %.2f | %.2f | %.2f | %.1f |",
                    known.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    c.eight,
                    c.nine,
                    c.error,
                    c.highOverLow);
            System.out.println(row);
            rows.add(row);
            all.add(c);
        }
        for (int i = 0; i < all.size(); i++) {
            assertThat(all.get(i).eight).as(rows.get(i)).isBetween(0.76, 0.84);
            assertThat(all.get(i).nine).as(rows.get(i)).isBetween(0.86, 0.93);
        }
        assertThat(rows)
                .as("the rows of docs/maths/fit.md")
                .allMatch(row -> notes.lines().anyMatch(row::equals));
    }
}
