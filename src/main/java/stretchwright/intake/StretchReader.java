package stretchwright.intake;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import stretchwright.body.Measure;
import stretchwright.body.Measured;
import stretchwright.body.PoseLength;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.FoldTest;
import stretchwright.fabric.LoadCurve;
import stretchwright.fabric.Usual;
import stretchwright.fabric.WrapTest;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/**
 * How far the cloth stretches, in whichever way it was found: as a share, by the fold test, by the wrap test, or by the
 * lengths in a pose that it reached.
 */
final class StretchReader {
    /** Two ways of finding the same share may differ by this much (two slips of the ruler, common practice). */
    static final double SAME = 0.05;

    /** Two places wrapped may differ by this much; after that one of them was pinned wrongly (common practice). */
    private static final double SAME_WRAP = 0.10;

    /**
     * What was found.
     *
     * @param recovery the smaller of both directions
     * @param usual whether nothing was found of a direction, and the usual stretch taken
     */
    record Found(
            double across,
            double along,
            OptionalDouble recovery,
            OptionalDouble wrapped,
            Fabric.Assumed assumed,
            Usual usual) {}

    private final Given given;
    private final Optional<Measured> wearer;

    private final boolean usual;

    /** @param usual whether the usual stretch is taken where nothing is told of it */
    StretchReader(Given given, Optional<Measured> wearer, boolean usual) {
        this.given = given;
        this.wearer = wearer;
        this.usual = usual;
    }

    Optional<Found> read() {
        Optional<FoldTest> foldAcross = fold(FabricKeys.FOLD_ACROSS);
        Optional<FoldTest> foldAlong = fold(FabricKeys.FOLD_ALONG);
        Optional<WrapTest> wrap = wrapped();
        Optional<Double> across = measured(
                FabricKeys.STRETCH_ACROSS,
                FabricKeys.FOLD_ACROSS,
                foldAcross,
                usual || tried(FabricKeys.WRAP_HIP, FabricKeys.WRAP_CALF) || given.has(HangKeys.ACROSS));
        int before = given.problems();
        boolean reached = given.orUsual(FabricKeys.REACHES_POSE) && posed();
        Optional<Double> along = measured(
                FabricKeys.STRETCH_ALONG,
                FabricKeys.FOLD_ALONG,
                foldAlong,
                usual || reached || given.problems() > before || given.has(HangKeys.ALONG));
        Usual taken = new Usual(
                false, usual && !toldAcross(), usual && !toldAlong() && !reached && given.problems() == before);
        OptionalDouble recovery = recovery(foldAcross, foldAlong);
        across = hung(across, FabricKeys.STRETCH_ACROSS, FabricKeys.FOLD_ACROSS, HangKeys.ACROSS, wrap.isPresent());
        along = hung(along, FabricKeys.STRETCH_ALONG, FabricKeys.FOLD_ALONG, HangKeys.ALONG, reached);
        boolean acrossAssumed =
                across.isEmpty() && !tried(FabricKeys.STRETCH_ACROSS, FabricKeys.FOLD_ACROSS) && wrap.isPresent();
        boolean alongAssumed = along.isEmpty() && !tried(FabricKeys.STRETCH_ALONG, FabricKeys.FOLD_ALONG) && reached;
        if (across.isPresent() && wrap.isPresent()) {
            beyond(wrap.get(), across.get());
        }
        across = acrossAssumed ? within(wrapKey(), wrap.orElseThrow().assumedStretch()) : across;
        along = alongAssumed ? Optional.of(lengthens()) : along;
        across = taken.across() ? Optional.of(Usual.ACROSS) : across;
        along = taken.along() ? Optional.of(Usual.ALONG) : along;
        if (across.isEmpty() || along.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Found(
                across.get(),
                along.get(),
                recovery,
                Row.unboxed(wrap.map(WrapTest::reduction)),
                new Fabric.Assumed(acrossAssumed, alongAssumed),
                taken));
    }

    /** Whether anything tells of it, right or wrong. */
    private boolean toldAcross() {
        return tried(FabricKeys.STRETCH_ACROSS, FabricKeys.FOLD_ACROSS)
                || tried(FabricKeys.WRAP_HIP, FabricKeys.WRAP_CALF)
                || given.has(HangKeys.ACROSS);
    }

    private boolean toldAlong() {
        return tried(FabricKeys.STRETCH_ALONG, FabricKeys.FOLD_ALONG) || given.has(HangKeys.ALONG);
    }

    /** Where no easy pull was read, 500 g on the strip stand for one; where both were, they must be of one cloth. */
    private Optional<Double> hung(
            Optional<Double> pulled,
            Key<Double> share,
            Key<List<Double>> fold,
            Key<List<LoadCurve.Reading>> hang,
            boolean otherWay) {
        if (pulled.isPresent()) {
            HangingReader.sameCloth(given, hang, pulled.get());
            return pulled;
        }
        if (tried(share, fold) || given.get(hang).isEmpty()) {
            return pulled;
        }
        Optional<Double> full = HangingReader.stretch(given, hang);
        if (full.isEmpty() && !otherWay) {
            given.add(hang, Tell.said("hang.light"), Tell.said("hang.full", Part.text(share.name())));
        }
        return full.flatMap(e -> within(hang, e));
    }

    private boolean tried(Key<?> one, Key<?> other) {
        return given.has(one) || given.has(other);
    }

    private Key<Double> wrapKey() {
        return given.has(FabricKeys.WRAP_HIP) ? FabricKeys.WRAP_HIP : FabricKeys.WRAP_CALF;
    }

    /** Comfortably pinned, the cloth cannot have been pulled further than it goes easily. */
    private void beyond(WrapTest wrap, double across) {
        if (wrap.strain() > across + SAME) {
            given.add(
                    wrapKey(),
                    Tell.said("wrap.beyond", tenths(wrap.strain()), tenths(across)),
                    Tell.said("wrap.pins-again"));
        }
    }

    private static Part tenths(double share) {
        return Part.share(share, 1);
    }

    /** The share given, or that of the fold test; both where they agree, and then the fold test, which is the reading. */
    private Optional<Double> measured(
            Key<Double> key, Key<List<Double>> foldKey, Optional<FoldTest> fold, boolean otherWay) {
        if (!tried(key, foldKey) && !otherWay) {
            given.missing(key);
        }
        Optional<Double> share = given.get(key);
        if (fold.isEmpty()) {
            return share;
        }
        double read = fold.get().stretch();
        if (differs(share, read)) {
            given.add(
                    key,
                    Tell.said("fold.differs", tenths(share.get()), Part.text(foldKey.name()), tenths(read)),
                    Tell.said("one-out.test"));
        }
        return within(foldKey, read);
    }

    private static boolean differs(Optional<Double> share, double read) {
        return share.isPresent() && Math.abs(share.get() - read) > SAME;
    }

    private Optional<Double> within(Key<?> key, double stretch) {
        Range range = FabricKeys.STRETCH;
        if (range.holds(stretch)) {
            return Optional.of(stretch);
        }
        given.add(
                key,
                Tell.said("stretch.impossible", tenths(stretch)),
                Tell.said("stretch.test", ShareKind.part(range.least()), ShareKind.part(range.most())));
        return Optional.empty();
    }

    private Optional<FoldTest> fold(Key<List<Double>> key) {
        Optional<List<Double>> mm = given.get(key);
        if (mm.isEmpty()) {
            return Optional.empty();
        }
        double relaxed = mm.get().get(0);
        double pulled = mm.get().get(1);
        double rested = mm.get().get(2);
        Said wrong = impossible(relaxed, pulled, rested);
        if (!wrong.isNothing()) {
            given.add(key, wrong, Tell.said("fold.write", Part.text(key.like(given.unit()))));
            return Optional.empty();
        }
        return Optional.of(new FoldTest(relaxed, pulled, rested));
    }

    private static Said impossible(double relaxed, double pulled, double rested) {
        if (pulled <= relaxed) {
            return Tell.said("fold.not-longer");
        }
        if (rested < relaxed) {
            return Tell.said("fold.shorter", Part.written(rested), Part.written(relaxed));
        }
        return rested > pulled
                ? Tell.said("fold.rested-longer", Part.written(rested), Part.written(pulled))
                : Said.NOTHING;
    }

    private OptionalDouble recovery(Optional<FoldTest> across, Optional<FoldTest> along) {
        Optional<Double> share = given.get(FabricKeys.RECOVERY);
        OptionalDouble least = Stream.of(across, along)
                .flatMap(Optional::stream)
                .mapToDouble(FoldTest::recovery)
                .min();
        if (least.isEmpty()) {
            return Row.unboxed(share);
        }
        double read = least.getAsDouble();
        if (differs(share, read)) {
            given.add(
                    FabricKeys.RECOVERY,
                    Tell.said("recovery.differs", tenths(share.get()), tenths(read)),
                    Tell.said("one-out.test"));
        }
        if (read <= 0) {
            Key<?> folded = across.isPresent() ? FabricKeys.FOLD_ACROSS : FabricKeys.FOLD_ALONG;
            given.add(folded, Tell.said("recovery.none"), Tell.said("recovery.other"));
        }
        return least;
    }

    /** Of two places the one that held less: the careful one. */
    private Optional<WrapTest> wrapped() {
        Optional<WrapTest> hip = wrap(FabricKeys.WRAP_HIP, Measure.HIP_GIRTH);
        Optional<WrapTest> calf = wrap(FabricKeys.WRAP_CALF, Measure.CALF_GIRTH);
        if (hip.isEmpty() || calf.isEmpty()) {
            return hip.or(() -> calf);
        }
        double a = hip.get().reduction();
        double b = calf.get().reduction();
        if (Math.abs(a - b) > SAME_WRAP) {
            given.add(
                    FabricKeys.WRAP_CALF, Tell.said("wrap.differ", tenths(b), tenths(a)), Tell.said("wrap.pin-again"));
        }
        return a <= b ? hip : calf;
    }

    private Optional<WrapTest> wrap(Key<Double> key, Measure measure) {
        Optional<Double> pinned = given.get(key);
        if (pinned.isEmpty() || wearer.isEmpty()) {
            return Optional.empty();
        }
        Double girth = wearer.get().means().get(measure);
        if (girth == null) {
            given.add(key, Tell.said("wrap.girth", Part.text(measure.term())), Tell.said("wrap.measure"));
            return Optional.empty();
        }
        if (pinned.get() >= girth) {
            given.add(
                    key,
                    Tell.said(
                            "wrap.not-less",
                            Part.written(pinned.get()),
                            Part.text(measure.term()),
                            Part.written(girth)),
                    Tell.said("wrap.how"));
            return Optional.empty();
        }
        return Optional.of(new WrapTest(girth, pinned.get()));
    }

    private boolean posed() {
        if (lengthens() > 0 || wearer.isEmpty()) {
            return wearer.isPresent();
        }
        Part like = Part.text(WearerKeys.course(PoseLength.Course.BACK_TO_FRONT).like(given.unit()));
        given.add(FabricKeys.REACHES_POSE, Tell.said("reaches.needs"), Tell.said("reaches.give", like));
        return false;
    }

    /** What the cloth is known to give where it reached the pose: no more than the lengths say. */
    private double lengthens() {
        return wearer.map(Measured::poseLengths).orElse(List.of()).stream()
                .mapToDouble(PoseLength::lengthens)
                .max()
                .orElse(0);
    }
}
