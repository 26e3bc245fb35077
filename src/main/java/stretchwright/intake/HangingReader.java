package stretchwright.intake;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.fabric.Hung;
import stretchwright.fabric.LoadCurve;
import stretchwright.ground.Part;

/** What hanging strips tell: load curves, how far 500 g stretch the cloth, how it narrows and what is left of its pull. */
final class HangingReader {
    /** A full weight is one near enough to 500 g, as a share of it. */
    private static final double NEARLY = 0.9;

    /** A length read twice may differ by this much of the marks (two slips of the ruler, common practice). */
    private static final double SLIP = 0.02;

    /** Cloth that loses so much of its width is none (knits 0.15 to 0.45 in 8 of 10; common practice). */
    private static final double NO_KNIT = 1.5;

    /** Less of the pull on the way back, or after half an hour, has no leg wear (way back 0.62 to 0.92; common practice). */
    private static final double LEAST_BACK = 0.4;

    private static final double LEAST_RELAXED = 0.5;

    /** An easy pull on the strip, N/m: a third of that of a light knit to three times that of a heavy one (docs/maths/fit.md). */
    private static final double EASIEST = 25;

    private static final double HARDEST = 900;

    /** The keys of one direction. */
    private record Way(
            Key<List<LoadCurve.Reading>> hang,
            Key<List<LoadCurve.Reading>> load,
            Key<List<LoadCurve.Reading>> back,
            Key<Double> width,
            Optional<Key<Double>> after) {}

    private static final Way ACROSS = new Way(
            HangKeys.ACROSS,
            FabricKeys.LOAD_ACROSS,
            HangKeys.BACK_ACROSS,
            HangKeys.WIDTH_ACROSS,
            Optional.of(HangKeys.AFTER));

    private static final Way ALONG =
            new Way(HangKeys.ALONG, FabricKeys.LOAD_ALONG, HangKeys.BACK_ALONG, HangKeys.WIDTH_ALONG, Optional.empty());

    /**
     * What was found; curves where they were read.
     *
     * @param hung besides the curves
     */
    record Found(Optional<LoadCurve> across, Optional<LoadCurve> along, Hung hung) {}

    private final Given given;

    private HangingReader(Given given) {
        this.given = given;
    }

    static Found read(Given given) {
        HangingReader reader = new HangingReader(given);
        Optional<LoadCurve> across = reader.curve(ACROSS);
        Optional<LoadCurve> along = reader.curve(ALONG);
        return new Found(across, along, new Hung(reader.way(ACROSS, across), reader.way(ALONG, along)));
    }

    /** How far the full weight stretched the strip; empty where no weight near it hung. */
    static Optional<Double> stretch(Given given, Key<List<LoadCurve.Reading>> hang) {
        return given.get(hang)
                .map(LoadCurve::through)
                .filter(HangingReader::isFull)
                .map(c -> c.extension(Hung.FULL));
    }

    private static boolean isFull(LoadCurve curve) {
        return curve.tension(curve.lastExtension()) >= NEARLY * Hung.FULL;
    }

    /** That the cloth goes so far easily, and that weights stretched it as they did, cannot both be. */
    static void sameCloth(Given given, Key<List<LoadCurve.Reading>> hang, double stretch) {
        Optional<LoadCurve> curve = given.get(hang).map(LoadCurve::through);
        if (curve.isEmpty()) {
            return;
        }
        double asked = curve.get().tension(stretch);
        if (asked < EASIEST || asked > HARDEST) {
            given.add(
                    hang,
                    Tell.said(
                            asked > HARDEST ? "hang.too-hard" : "hang.too-soft",
                            Part.share(stretch),
                            grams(asked),
                            grams(EASIEST),
                            grams(HARDEST)),
                    Tell.said("hang.other-cloth"));
        }
    }

    private static Part grams(double tension) {
        return Part.text(Math.round(HangsKind.grams(tension) / 10) * 10 + " g");
    }

    private Optional<LoadCurve> curve(Way way) {
        if (given.has(way.hang) && given.has(way.load)) {
            given.add(
                    way.hang,
                    Tell.said("hang.twice", Part.text(way.load.name())),
                    Tell.said("hang.one", Part.text(way.load.name())));
            return Optional.empty();
        }
        return given.get(way.hang).or(() -> given.get(way.load)).map(LoadCurve::through);
    }

    private Hung.Way way(Way way, Optional<LoadCurve> curve) {
        OptionalDouble narrowing = given.get(way.width)
                .filter(mm -> out(way, way.width, curve, true))
                .map(mm -> narrowing(way, mm, curve.orElseThrow()))
                .orElse(OptionalDouble.empty());
        OptionalDouble back = given.get(way.back)
                .filter(all -> out(way, way.back, curve, false))
                .map(all -> back(way, all, curve.orElseThrow()))
                .orElse(OptionalDouble.empty());
        OptionalDouble relaxed = way.after
                .flatMap(key -> given.get(key)
                        .filter(mm -> out(way, key, curve, true))
                        .map(mm -> relaxed(key, mm, curve.orElseThrow())))
                .orElse(OptionalDouble.empty());
        return new Hung.Way(narrowing, back, relaxed);
    }

    /** Whether the readings on the way out are there that a further one is held against. */
    private boolean out(Way way, Key<?> key, Optional<LoadCurve> curve, boolean full) {
        boolean there = curve.isPresent() && (!full || isFull(curve.get()));
        if (!there && given.has(way.hang) == given.get(way.hang).isPresent() && !both(way)) {
            given.add(
                    key,
                    Tell.said(full ? "hang.needs-full" : "hang.needs-out", Part.text(way.hang.name())),
                    Tell.said("example", Part.text(way.hang.like(given.unit()))));
        }
        return there;
    }

    private boolean both(Way way) {
        return given.has(way.hang) && given.has(way.load);
    }

    private OptionalDouble narrowing(Way way, double mm, LoadCurve curve) {
        if (mm > Hung.WIDTH) {
            given.add(
                    way.width,
                    Tell.said("hang.wider", Part.written(mm), Part.length(Hung.WIDTH)),
                    Tell.said("hang.width-again"));
            return OptionalDouble.empty();
        }
        double narrowing = Hung.narrowing(mm, curve.extension(Hung.FULL));
        if (narrowing > NO_KNIT) {
            given.add(
                    way.width,
                    Tell.said(
                            "hang.too-narrow",
                            Part.share(1 - mm / Hung.WIDTH),
                            Part.share(curve.extension(Hung.FULL)),
                            Part.share(narrowing)),
                    Tell.said("hang.width-again"));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(narrowing);
    }

    private OptionalDouble back(Way way, List<LoadCurve.Reading> back, LoadCurve curve) {
        HangsKind kind = (HangsKind) way.back.kind();
        for (LoadCurve.Reading reading : back) {
            double outward = curve.extension(reading.tension());
            boolean longer = reading.extension() > curve.lastExtension()
                    || reading.tension() > curve.tension(curve.lastExtension());
            if (longer || reading.extension() < outward - SLIP) {
                double mm = Hung.MARKS * (1 + (longer ? curve.lastExtension() : outward));
                given.add(
                        way.back,
                        Tell.said(
                                longer ? "hang.back-longer" : "hang.back-shorter", kind.told(reading), Part.length(mm)),
                        Tell.said("hang.back-how"));
                return OptionalDouble.empty();
            }
        }
        double share = Hung.wayBack(curve, back);
        if (share < LEAST_BACK) {
            given.add(way.back, Tell.said("hang.back-little", Part.share(share)), Tell.said("hang.other-cloth"));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(share);
    }

    private OptionalDouble relaxed(Key<Double> key, double mm, LoadCurve curve) {
        double crept = mm / Hung.MARKS - 1;
        double full = curve.extension(Hung.FULL);
        double relaxed = crept > 0 ? Hung.relaxed(curve, crept) : 1;
        boolean shorter = crept < full - SLIP;
        if (shorter || relaxed < LEAST_RELAXED) {
            given.add(
                    key,
                    Tell.said(
                            shorter ? "hang.after-shorter" : "hang.after-longer",
                            Part.written(mm),
                            Part.length(Hung.MARKS * (1 + full))),
                    Tell.said("hang.after-how"));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(relaxed);
    }
}
