package stretchwright.fabric;

import java.util.Optional;
import java.util.OptionalDouble;

/** Invented cloths for tests. */
public final class SampleFabric {
    private SampleFabric() {}

    /** 60 % across, 45 % along, 1470 mm usable, no readings. */
    public static Fabric heavyKnit() {
        return with(1470, 0.60, 0.45, true);
    }

    /** 60 % across and 45 % along, and hard to stretch: 10 N on 50 mm at 20 %. */
    public static Fabric stiff() {
        Fabric soft = heavyKnit();
        return new Fabric(
                new Fabric.Quality(
                        soft.quality().weight(),
                        soft.quality().shrinkageAcross(),
                        soft.quality().shrinkageAlong()),
                new Fabric.Roll(
                        "stiff sample knit",
                        soft.roll().usableWidth(),
                        soft.roll().onHand(),
                        soft.roll().oneWay(),
                        soft.roll().repeatAlong(),
                        soft.roll().price(),
                        ClothShape.WHOLE),
                new Fabric.Test(
                        soft.test().stretchAcross(),
                        soft.test().stretchAlong(),
                        LoadCurve.through(
                                java.util.List.of(new LoadCurve.Reading(0.20, 200), new LoadCurve.Reading(0.40, 450))),
                        soft.test().loadAlong(),
                        soft.test().recovery(),
                        soft.test().showsThroughAt(),
                        OptionalDouble.empty(),
                        Fabric.Assumed.NOTHING));
    }

    public static Fabric with(double usableWidth, double across, double along, boolean oneWay) {
        return new Fabric(
                new Fabric.Quality(OptionalDouble.of(260), 0.01, 0.02),
                new Fabric.Roll(
                        "sample knit",
                        usableWidth,
                        OptionalDouble.empty(),
                        oneWay,
                        0,
                        Optional.of(new Fabric.Price(14.5)),
                        ClothShape.WHOLE),
                new Fabric.Test(
                        across,
                        along,
                        LoadCurve.assumed(across),
                        LoadCurve.assumed(along),
                        OptionalDouble.of(0.95),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Fabric.Assumed.NOTHING));
    }
}
