package stretchwright.settle;

import java.util.function.ToDoubleFunction;
import stretchwright.body.SampleBody;
import stretchwright.fabric.SampleFabric;

/** How far either side of its middle the balance tries what nobody measured: for tests of other rooms. */
public final class Constants {
    private Constants() {}

    private static Guess[] pair(ToDoubleFunction<Guess> of) {
        return Unsure.about(Guess.MIDDLE, SampleBody.smallAdult(), SampleFabric.heavyKnit()).stream()
                .filter(p -> of.applyAsDouble(p[0]) < of.applyAsDouble(p[1]))
                .findFirst()
                .orElseThrow();
    }

    /** One standard deviation. */
    public static double spread(ToDoubleFunction<Guess> of) {
        Guess[] pair = pair(of);
        return (of.applyAsDouble(pair[1]) - of.applyAsDouble(pair[0])) / 2;
    }

    /** One standard deviation of the logarithm. */
    public static double logSpread(ToDoubleFunction<Guess> of) {
        Guess[] pair = pair(of);
        return Math.log(of.applyAsDouble(pair[1]) / of.applyAsDouble(pair[0])) / 2;
    }
}
