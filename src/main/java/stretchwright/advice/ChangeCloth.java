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
import stretchwright.intake.MakeFile;

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

    /** A quarter turned: what was along goes round the leg; the usable width stays. */
    ChangeLever turned() {
        Fabric other = cloth(
                f.stretchAlong(),
                f.stretchAcross(),
                f.loadAlong(),
                f.loadAcross(),
                f.shrinkageAlong(),
                f.shrinkageAcross());
        return choice(f.oneWay() ? Tell.said("cloth.turned-print") : Tell.said("cloth.turned"), 1.6, with(other));
    }

    /** Washed and dried as the garment will be, until it keeps its size. */
    ChangeLever washed() {
        Fabric other = cloth(f.stretchAcross(), f.stretchAlong(), f.loadAcross(), f.loadAlong(), 0, 0);
        return choice(Tell.said("cloth.washed"), 0.5, with(other)).judgedOnly();
    }

    ChangeLever moreAcross() {
        return more(
                Way.MORE_ACROSS,
                Direction.ACROSS,
                f.stretchAcross(),
                x -> cloth(
                        x,
                        f.stretchAlong(),
                        stretched(f.loadAcross(), x / f.stretchAcross(), x),
                        f.loadAlong(),
                        f.shrinkageAcross(),
                        f.shrinkageAlong()));
    }

    ChangeLever moreAlong() {
        return more(
                Way.MORE_ALONG,
                Direction.ALONG,
                f.stretchAlong(),
                x -> cloth(
                        f.stretchAcross(),
                        x,
                        f.loadAcross(),
                        stretched(f.loadAlong(), x / f.stretchAlong(), x),
                        f.shrinkageAcross(),
                        f.shrinkageAlong()));
    }

    /** The same stretch at a weaker pull; only where the pull was measured, an assumed one cannot be asked for. */
    Optional<ChangeLever> softer() {
        if (f.loadAcross().isAssumed()) {
            return Optional.empty();
        }
        LoadCurve.Reading first = f.loadAcross().readings().get(0);
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
                        f.stretchAcross(),
                        f.stretchAlong(),
                        pulling(1 - n / 100.0),
                        f.loadAlong(),
                        f.shrinkageAcross(),
                        f.shrinkageAlong()))));
    }

    ChangeLever recovering() {
        int now = (int) Math.floor(100 * f.recovery().orElse(1) + 1e-9);
        return new ChangeLever(
                        Math.max(1, 100 - now),
                        Tell.said("cloth.recovers-fully"),
                        n -> 3 + n / 20.0,
                        n -> Tell.said("cloth.recovers", percent(now + n)),
                        n -> now + n > 100
                                ? Optional.empty()
                                : with(with(OptionalDouble.of((now + n) / 100.0), f.showsThroughAt())))
                .by(Way.RECOVERING)
                .judgedOnly();
    }

    /** Denser, or doubled by a lining: named by the areal stretch up to which nothing shows. */
    ChangeLever denser() {
        int now = (int) Math.floor(100 * f.showsThroughAt().orElse(0) + 1e-9);
        return new ChangeLever(
                        200,
                        Tell.said("cloth.densest", percent(now + 200)),
                        n -> 2.5 + n / 40.0,
                        n -> Tell.said("cloth.denser", percent(now + n)),
                        n -> with(with(f.recovery(), OptionalDouble.of((now + n) / 100.0))))
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

    private static LoadCurve stretched(LoadCurve curve, double factor, double stretch) {
        return curve.isAssumed() ? LoadCurve.assumed(stretch) : scaled(curve, factor, 1);
    }

    private LoadCurve pulling(double factor) {
        return scaled(f.loadAcross(), 1, factor);
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
        return new Fabric(
                f.name(),
                f.usableWidth(),
                f.onHand(),
                f.weight(),
                across,
                along,
                loadAcross,
                loadAlong,
                f.recovery(),
                shrinkAcross,
                shrinkAlong,
                f.oneWay(),
                f.repeatAlong(),
                f.showsThroughAt(),
                f.price(),
                across == f.stretchAcross() ? f.wrapped() : OptionalDouble.empty(),
                new Fabric.Assumed(
                        f.assumed().across() && across == f.stretchAcross(),
                        f.assumed().along() && along == f.stretchAlong()),
                f.shape());
    }

    private Fabric with(OptionalDouble recovery, OptionalDouble showsThroughAt) {
        return new Fabric(
                f.name(),
                f.usableWidth(),
                f.onHand(),
                f.weight(),
                f.stretchAcross(),
                f.stretchAlong(),
                f.loadAcross(),
                f.loadAlong(),
                recovery,
                f.shrinkageAcross(),
                f.shrinkageAlong(),
                f.oneWay(),
                f.repeatAlong(),
                showsThroughAt,
                f.price(),
                f.wrapped(),
                f.assumed(),
                f.shape());
    }
}
