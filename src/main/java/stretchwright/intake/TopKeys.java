package stretchwright.intake;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import stretchwright.ground.Part;
import stretchwright.pattern.Parts;
import stretchwright.pattern.TopEnd;
import stretchwright.pattern.TopEnd.BackShape;
import stretchwright.pattern.TopEnd.Band;

/** Rows of the top: rise, its front and back, the shape of the back, the waistband. */
public final class TopKeys {
    /** Finished waistband where none is given: the lower end of a middle band (common practice, no source). */
    public static final double USUAL_BAND = 60;

    private static final Range DROP = new Range(0, 300, "why.rise");

    public static final Key<Rise> RISE = Key.of(
                    "style.rise",
                    new EitherKind<>(
                            ChoiceKind.of(List.of(Rise.WAIST, Rise.HIP), r -> r.equals(Rise.HIP) ? "hip" : "waist")
                                    .also(Rise.WAIST, "high waist", "at the waist")
                                    .also(Rise.HIP, "hips"),
                            new LengthKind(DROP, Optional.of(new LengthKind.Usual(10, 200)), false),
                            Rise::below,
                            Rise::mm,
                            Optional.of("rise.is-not"),
                            Optional.of("rise.write")),
                    "waist")
            .usually(Rise.WAIST)
            .worn(new Worn<>(WearingKey.RISE, TopKeys::lowered))
            .in(top(
                    t -> Optional.of(Rise.below(t.dropBelowWaist())),
                    (t, rise) -> rise.mm().map(t::dropped).orElse(t)))
            .echoed("dropBelowWaist");

    /** Signed: sway backs take 6 to 25 mm off, full seats and seated wearers add up to 50 (makers' troubles). */
    private static final Range RAISE = new Range(-50, 60, "why.raise");

    public static final Key<Double> FRONT_WAIST = Row.worn(
            Row.signed("style.front waist", RAISE, 2, 50, "{-10}")
                    .usually(0.0)
                    .in(top(t -> Optional.of(t.frontRaise()), (t, mm) -> t.raised(mm, t.backRaise()))),
            WearingKey.FRONT_WAIST);

    public static final Key<Double> BACK_WAIST = Row.worn(
            Row.signed("style.back waist", RAISE, 2, 50, "{15}")
                    .usually(0.0)
                    .in(top(t -> Optional.of(t.backRaise()), (t, mm) -> t.raised(t.frontRaise(), mm))),
            WearingKey.BACK_WAIST);

    public static final Key<BackShape> BACK = Row.choice(
                    "style.back",
                    ChoiceKind.of(BackShape.class).also(BackShape.SHAPED_SEAM, "shaped", "shaped centre seam"),
                    "shaped seam")
            .usually(BackShape.PLAIN)
            .in(top(t -> Optional.of(t.back()), TopEnd::with))
            .wornOnce(WearingKey.BACK, BackShape.SHAPED_SEAM, TopKeys::takenInAlready);

    static final Key<Boolean> WAISTBAND =
            Row.section("style.waistband", "{shape: straight, height: {65}}").also("band", "waist band");

    public static final Key<Band.Shape> SHAPE = Row.choice(
                    "style.waistband.shape",
                    ChoiceKind.of(Band.Shape.class)
                            .also(Band.Shape.STRAIGHT, "folded", "plain")
                            .also(Band.Shape.CONTOURED, "curved", "contour"),
                    "straight")
            .usually(Band.Shape.STRAIGHT)
            .in(top(t -> Optional.of(t.band().shape()), TopKeys::shaped))
            .echoed("waistband.shape")
            .wornOnce(WearingKey.BAND, Band.Shape.CONTOURED, TopKeys::notContoured);

    /** High bands are 110 to 140 mm (trade values 5); 8 mm is the narrowest that can be folded and sewn. */
    public static final Key<Double> BAND_HEIGHT = Row.length(
                    "style.waistband.height", 8, 250, "why.band-height", 20, 150, "{65}")
            .in(band(b -> Optional.of(b.height()), Band::high))
            .echoed("bandHeight");

    /** Waist elastics are sold from 6 to 60 mm (common practice, no source). */
    public static final Key<OptionalDouble> ELASTIC = Key.of(
                    "style.waistband.elastic",
                    new EitherKind<>(
                            ChoiceKind.of(List.of(OptionalDouble.empty()), e -> SectionKind.NONE),
                            Row.lengthKind(6, 60, "why.elastic", 10, 50),
                            OptionalDouble::of,
                            Row::boxed,
                            Optional.empty(),
                            Optional.empty()),
                    "{25}")
            .needing(Need.when("needed.casing"))
            .in(band(
                    b -> Optional.of(b.elastic()).filter(OptionalDouble::isPresent),
                    (b, mm) -> new Band(b.shape(), b.height(), mm, b.drawstring(), b.keyPocket())))
            .echoed("waistband.elastic");

    public static final Key<Boolean> DRAWSTRING = Row.yes("style.waistband.drawstring")
            .usually(false)
            .also("cord")
            .in(band(
                    b -> Optional.of(b.drawstring()),
                    (b, yes) -> new Band(
                            b.shape(), b.height(), b.elastic(), yes, b.keyPocket(), b.elasticAsNeeded() && !yes)))
            .echoed("waistband.drawstring");

    /** A key is about 25 mm wide; wider than 150 mm is no key pocket (common practice, no source). */
    public static final Key<Double> KEY_POCKET = Row.length(
                    "style.waistband.key pocket", 35, 150, "why.key-pocket", 40, 120, "{70}")
            .in(band(b -> Row.boxed(b.keyPocket()), Band::withKeyPocket))
            .echoed("waistband.keyPocket");

    private TopKeys() {}

    static List<Key<?>> rows() {
        return List.of(
                RISE, FRONT_WAIST, BACK_WAIST, BACK, WAISTBAND, SHAPE, BAND_HEIGHT, ELASTIC, DRAWSTRING, KEY_POCKET);
    }

    private static <T> Lens<T> top(Function<TopEnd, Optional<T>> get, BiFunction<TopEnd, T, TopEnd> set) {
        return Row.ofStyle(s -> get.apply(s.top()), (s, value) -> s.with(set.apply(s.top(), value)));
    }

    private static <T> Lens<T> band(Function<Band, Optional<T>> get, BiFunction<Band, T, Band> set) {
        return top(t -> get.apply(t.band()), (t, value) -> t.with(set.apply(t.band(), value)));
    }

    private static TopEnd shaped(TopEnd top, Band.Shape shape) {
        return shape == Band.Shape.CONTOURED
                ? top.contoured().orElse(top)
                : top.with(top.band().shaped(shape));
    }

    /** The top edge lower all round; a contoured band has nothing to follow at the waist itself. */
    private static Worn.Outcome lowered(MakeFile make, double by) {
        TopEnd top = make.style().top();
        double drop = top.dropBelowWaist() + by;
        boolean contoured = top.band().shape() == Band.Shape.CONTOURED;
        return !DROP.holds(drop) || (contoured && drop == 0)
                ? Worn.Outcome.beyond(Tell.said("worn.rise", Part.length(drop)))
                : Worn.Outcome.of(make.with(make.style().with(top.dropped(drop))));
    }

    private static Optional<Worn.Outcome> takenInAlready(MakeFile make) {
        boolean taken = make.style().parts().sideSeam() == Parts.SideSeam.SHAPED
                || make.style().top().back() == BackShape.DARTS;
        return taken
                ? Optional.of(Worn.Outcome.hindered(Tell.said("worn.back"), Tell.said("worn.back-instead")))
                : Optional.empty();
    }

    private static Optional<Worn.Outcome> notContoured(MakeFile make) {
        TopEnd top = make.style().top();
        boolean can = top.contoured().isPresent() || top.band().shape() == Band.Shape.CONTOURED;
        return can
                ? Optional.empty()
                : Optional.of(Worn.Outcome.hindered(Tell.said("worn.band"), Tell.said("worn.band-instead")));
    }
}
