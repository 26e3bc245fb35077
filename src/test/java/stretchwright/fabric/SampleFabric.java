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
