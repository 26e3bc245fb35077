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
                "stiff sample knit",
                soft.usableWidth(),
                soft.onHand(),
                soft.weight(),
                soft.stretchAcross(),
                soft.stretchAlong(),
                LoadCurve.through(
                        java.util.List.of(new LoadCurve.Reading(0.20, 200), new LoadCurve.Reading(0.40, 450))),
                soft.loadAlong(),
                soft.recovery(),
                soft.shrinkageAcross(),
                soft.shrinkageAlong(),
                soft.oneWay(),
                soft.repeatAlong(),
                soft.showsThroughAt(),
                soft.price());
    }

    public static Fabric with(double usableWidth, double across, double along, boolean oneWay) {
        return new Fabric(
                "sample knit",
                usableWidth,
                OptionalDouble.empty(),
                OptionalDouble.of(260),
                across,
                along,
                LoadCurve.assumed(across),
                LoadCurve.assumed(along),
                OptionalDouble.of(0.95),
                0.01,
                0.02,
                oneWay,
                0,
                OptionalDouble.empty(),
                Optional.of(new Fabric.Price(14.5)));
    }
}
