package stretchwright.advice;

import static stretchwright.advice.ChangeLever.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.advice.ChangeLever.Way;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.LoadCurve;
import stretchwright.fit.Direction;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.intake.MakeFile;
import stretchwright.pattern.LayTerms;

/** Changes of the cloth: turned, washed, or another one with a number to ask the shop for. */
final class ChangeCloth {
    /** Cloth for legs is not sold beyond this stretch, share (trade-values 1.1: up to 100 %; some rib a little more). */
    private static final double STRETCHIEST = 1.20;

    /** Below this share of the pull no cloth of the same stretch is found (common practice, no source). */
    private static final int SOFTEST = 60;

    private final MakeFile make;
    private final Fabric f;

    ChangeCloth(MakeFile make) {
        this.make = make;
        this.f = make.fabric();
    }

    /** Cut crosswise, or no longer so: what was along goes round the leg; the usable width stays. */
    ChangeLever turned() {
        LayTerms lay = make.style().lay();
        Part open = Part.text("{");
        Part close = Part.text("}");
        Said words = lay.crosswise()
                ? Tell.said("cloth.turned-back")
                : f.roll().oneWay()
                        ? Tell.said("cloth.turned-print", open, close)
                        : Tell.said("cloth.turned", open, close);
        return choice(words, 1.6, Optional.of(make.with(make.style().with(lay.crosswise(!lay.crosswise())))));
    }

    /** Washed and dried as the garment will be, until it keeps its size. */
    ChangeLever washed() {
        Fabric other = cloth(
                f.test().stretchAcross(),
                f.test().stretchAlong(),
                f.test().loadAcross(),
                f.test().loadAlong(),
                0,
                0);
        return choice(Tell.said("cloth.washed"), 0.5, with(other)).judgedOnly();
    }

    ChangeLever moreAcross() {
        return more(
                Way.MORE_ACROSS,
                Direction.ACROSS,
                f.test().stretchAcross(),
                x -> cloth(
                        x,
                        f.test().stretchAlong(),
                        stretched(f.test().loadAcross(), x / f.test().stretchAcross(), x),
                        f.test().loadAlong(),
                        f.quality().shrinkageAcross(),
                        f.quality().shrinkageAlong()));
    }

    ChangeLever moreAlong() {
        return more(
                Way.MORE_ALONG,
                Direction.ALONG,
                f.test().stretchAlong(),
                x -> cloth(
                        f.test().stretchAcross(),
                        x,
                        f.test().loadAcross(),
                        stretched(f.test().loadAlong(), x / f.test().stretchAlong(), x),
                        f.quality().shrinkageAcross(),
                        f.quality().shrinkageAlong()));
    }

    /** The same stretch at a weaker pull; only where the pull was measured, an assumed one cannot be asked for. */
    Optional<ChangeLever> softer() {
        if (f.test().loadAcross().isAssumed()) {
            return Optional.empty();
        }
        LoadCurve.Reading first = f.test().loadAcross().readings().get(0);
        double newtons = first.tension() * LoadCurve.STRIP_WIDTH;
        return Optional.of(new ChangeLever(
                SOFTEST,
                Tell.said("cloth.softest", percent(100 - SOFTEST)),
                n -> 3 + n / 20.0,
                n -> Tell.said(
                        "cloth.softer",
                        percent(n),
                        new Part.Force(newtons * (100 - n) / 100, 1),
                        Part.share(first.extension()),
                        Part.length(1000 * LoadCurve.STRIP_WIDTH)),
                n -> with(cloth(
                        f.test().stretchAcross(),
                        f.test().stretchAlong(),
                        pulling(1 - n / 100.0),
                        f.test().loadAlong(),
                        f.quality().shrinkageAcross(),
                        f.quality().shrinkageAlong()))));
    }

    ChangeLever recovering() {
        int now = (int) Math.floor(100 * f.test().recovery().orElse(1) + 1e-9);
        return new ChangeLever(
                        Math.max(1, 100 - now),
                        Tell.said("cloth.recovers-fully"),
                        n -> 3 + n / 20.0,
                        n -> Tell.said("cloth.recovers", percent(now + n)),
                        n -> now + n > 100
                                ? Optional.empty()
                                : with(with(
                                        OptionalDouble.of((now + n) / 100.0),
                                        f.test().showsThroughAt())))
                .by(Way.RECOVERING)
                .judgedOnly();
    }

    /** Denser, or doubled by a lining: named by the areal stretch up to which nothing shows. */
    ChangeLever denser() {
        int now = (int) Math.floor(100 * f.test().showsThroughAt().orElse(0) + 1e-9);
        return new ChangeLever(
                        200,
                        Tell.said("cloth.densest", percent(now + 200)),
                        n -> 2.5 + n / 40.0,
                        n -> Tell.said("cloth.denser", percent(now + n)),
                        n -> with(with(f.test().recovery(), OptionalDouble.of((now + n) / 100.0))))
                .judgedOnly();
    }

    private interface Stretching {
        Fabric to(double share);
    }

    private ChangeLever more(Way way, Direction direction, double stretch, Stretching other) {
        int now = (int) Math.floor(100 * stretch + 1e-9);
        int most = Math.max(1, (int) Math.round(100 * STRETCHIEST) - now);
        return new ChangeLever(
                        most,
                        Tell.said("cloth.stretchiest", percent(now + most), direction.said()),
                        n -> 3 + n / 20.0,
                        n -> Tell.said("cloth.stretchier", percent(now + n), direction.said()),
                        n -> now + n > 100 * STRETCHIEST ? Optional.empty() : with(other.to((now + n) / 100.0)))
                .by(way);
    }

    private static Part percent(int percent) {
        return Part.share(percent / 100.0);
    }

    private LoadCurve stretched(LoadCurve curve, double factor, double stretch) {
        return curve.isAssumed() ? LoadCurve.assumed(stretch, f.quality().weight()) : scaled(curve, factor, 1);
    }

    private LoadCurve pulling(double factor) {
        return scaled(f.test().loadAcross(), 1, factor);
    }

    private static LoadCurve scaled(LoadCurve curve, double extension, double tension) {
        List<LoadCurve.Reading> all = new ArrayList<>();
        curve.readings().forEach(r -> all.add(new LoadCurve.Reading(r.extension() * extension, r.tension() * tension)));
        return LoadCurve.through(all);
    }

    private Optional<MakeFile> with(Fabric other) {
        return Optional.of(make.with(other));
    }

    private Fabric cloth(
            double across,
            double along,
            LoadCurve loadAcross,
            LoadCurve loadAlong,
            double shrinkAcross,
            double shrinkAlong) {
        return f.with(f.quality().shrinking(shrinkAcross, shrinkAlong))
                .with(f.test().with(across, along, loadAcross, loadAlong));
    }

    private Fabric with(OptionalDouble recovery, OptionalDouble showsThroughAt) {
        return f.with(f.test().with(recovery, showsThroughAt));
    }
}
