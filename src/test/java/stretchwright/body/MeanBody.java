package stretchwright.body;

import java.util.Map;
import java.util.OptionalDouble;

/** The body in the middle of a survey: nothing given, everything expected. */
public final class MeanBody {
    private MeanBody() {}

    public static Body of(Figure figure) {
        Known nothing = Known.of(figure, OptionalDouble.empty(), Map.of());
        return new Body(figure, OptionalDouble.empty(), Measuring.values(nothing, Map.of(), HandMeasuring::spread));
    }
}
