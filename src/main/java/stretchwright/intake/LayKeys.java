package stretchwright.intake;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import stretchwright.ground.Quantities;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Style.LayWay;

/** Rows of the lay: how the pieces are to lie on the cloth. */
public final class LayKeys {
    static final Key<Boolean> LAY =
            Row.sectionOr("style.lay", "way", "{way: any, scissor gap: {5}}").also("layout");

    public static final Key<LayWay> WAY = Row.choice(
                    "style.lay.way",
                    ChoiceKind.of(LayWay.class)
                            .also(LayWay.OPEN, "single layer", "unfolded", "flat")
                            .also(LayWay.FOLDED, "on the fold", "fold"),
                    "any")
            .usually(LayWay.ANY)
            .in(lay(l -> Optional.of(l.way()), LayTerms::with))
            .echoed("lay")
            .onRoll(Roll.same(Roll.About.LAY));

    public static final Key<Double> GAP = Row.length(
                    "style.lay.scissor gap", 0, LayTerms.MOST_GAP, "why.scissor-gap", 1, 30, "{5}")
            .usually(0.0)
            .also("gap between pieces")
            .in(lay(l -> Row.above0(l.gap()), LayTerms::gap))
            .echoed("scissorGap")
            .onRoll(Roll.same(Roll.About.LAY));

    public static final Key<Double> TILT = Key.of(
                    "style.lay.grain tolerance",
                    new QuantityKind(
                            LayKeys::degrees,
                            new Range(0, LayTerms.MOST_TILT, "why.grain-tolerance"),
                            "degrees",
                            "degrees.is-not",
                            "degrees.write"),
                    "1")
            .usually(0.0)
            .in(lay(l -> Row.above0(l.tilt()), LayTerms::tilt))
            .echoed("grainTolerance")
            .onRoll(Roll.same(Roll.About.LAY));

    public static final Key<String> MATCH_AT = Row.name("style.lay.match print at", "knee")
            .in(lay(LayTerms::matchAt, LayTerms::matching))
            .echoed("matchPrintAt")
            .onRoll(Roll.same(Roll.About.LAY));

    public static final Key<Boolean> CROSSWISE = Row.yes("style.lay.crosswise")
            .usually(false)
            .in(lay(l -> l.crosswise() ? Optional.of(true) : Optional.empty(), LayTerms::crosswise))
            .echoed("crosswise")
            .onRoll(Roll.same(Roll.About.LAY));

    private LayKeys() {}

    static List<Key<?>> rows() {
        return List.of(LAY, WAY, GAP, TILT, MATCH_AT, CROSSWISE);
    }

    private static <T> Lens<T> lay(Function<LayTerms, Optional<T>> get, BiFunction<LayTerms, T, LayTerms> set) {
        return Row.ofStyle(s -> get.apply(s.lay()), (s, value) -> s.with(set.apply(s.lay(), value)));
    }

    private static OptionalDouble degrees(String text) {
        return Quantities.number(text.replaceFirst("\\s*(degrees?|°)$", ""));
    }
}
