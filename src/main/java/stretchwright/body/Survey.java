package stretchwright.body;

import java.util.List;
import java.util.Map;

/**
 * What a survey tells of one figure: the joint normal of its measures and the range of each that people have.
 *
 * @param levels the same people with the waist taken at different levels: the natural waist first, then half way to
 *     the navel, then the navel (one level only for children)
 */
record Survey(List<JointNormal> levels, Map<Measure, Range> ranges, Growth growth) {
    /** Variables besides the measures: the growth of children. */
    static final int GROWTH = Measure.values().length;

    record Range(double low, double high) {}

    static Survey of(Figure figure) {
        return switch (figure) {
            case WOMAN -> Shipped.WOMAN;
            case MAN -> Shipped.MAN;
            case CHILD -> Shipped.CHILD;
        };
    }

    /** Read once, when first asked for. */
    private static final class Shipped {
        private static final Survey WOMAN = SurveyText.read("woman.txt");
        private static final Survey MAN = SurveyText.read("man.txt");
        private static final Survey CHILD = SurveyText.read("child.txt");
    }
}
