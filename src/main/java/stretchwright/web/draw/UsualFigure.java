package stretchwright.web.draw;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.body.Measuring;
import stretchwright.ground.Findings;

/** Bodies to draw before anything is measured: the usual one of a stature. */
public final class UsualFigure {
    private static final Map<Figure, Body> ALL = all();

    private UsualFigure() {}

    public static Body of(Figure figure) {
        Body body = ALL.get(figure);
        if (body == null) {
            throw new IllegalStateException("no usual body of a " + figure.word());
        }
        return body;
    }

    private static Map<Figure, Body> all() {
        Map<Figure, Body> all = new EnumMap<>(Figure.class);
        all.put(Figure.WOMAN, body(Figure.WOMAN, OptionalDouble.empty(), 1660));
        all.put(Figure.MAN, body(Figure.MAN, OptionalDouble.empty(), 1780));
        all.put(Figure.CHILD, body(Figure.CHILD, OptionalDouble.of(9), 1340));
        return all;
    }

    private static Body body(Figure figure, OptionalDouble age, double stature) {
        return Measuring.body(figure, age, Map.of(Measure.STATURE, stature), new Findings("figure"))
                .orElseThrow();
    }
}
