package stretchwright.intake;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.LowerEnd.Hem;
import stretchwright.pattern.Style;
import stretchwright.pattern.Style.Leg;

/** Rows of the leg and how it ends below. */
public final class LegKeys {
    /** Straps: 20 to 25 mm of firm elastic over a boot; wider cloth on the bare foot (common practice, no source). */
    static final double USUAL_STRAP = 22;

    static final double USUAL_STIRRUP = 40;

    /** Firm elastic of 20 to 25 mm (makers' troubles 5.2, common practice). */
    static final Range UNDER_BOOT = new Range(20, 25, "why.strap");

    public static final Key<Leg> LEG = Row.choice(
                    "style.leg",
                    ChoiceKind.of(Leg.class)
                            .also(Leg.OVER_BOOT, "over the boot", "over boots", "over the boots")
                            .also(Leg.ANKLE, "full length", "long", "leggings", "to the ankle")
                            .also(Leg.STIRRUP, "stirrups")
                            .also(Leg.CALF, "capri", "to the calf")
                            .also(Leg.KNEE, "knee length", "to the knee")
                            .also(Leg.SHORT, "shorts", "bike shorts"),
                    "ankle")
            .in(Row.ofStyle(s -> Optional.of(s.leg()), LegKeys::with));

    public static final Key<Hem> HEM = Row.choice(
                    "style.hem",
                    ChoiceKind.of(List.of(Hem.values()), Hem::word)
                            .also(Hem.INSIDE_BOOT, "in the boot")
                            .also(Hem.OVER_HEEL, "over heel")
                            .also(Hem.OVER_LACES, "over laces"),
                    "over the laces")
            .usually(Hem.OVER_LACES)
            .in(Row.ofStyle(
                    s -> Optional.of(s.lower().hem()).filter(h -> s.leg() == Leg.OVER_BOOT),
                    (s, hem) -> s.with(with(s.lower(), hem))));

    /** Makers lower the back by 30 to 60 mm (makers' troubles 5.2, common practice); a little either way is let through. */
    public static final Key<Double> HEM_DROP = Row.length("style.hem drop", 20, 70, "why.hem-drop", 20, 70, "{40}")
            .in(lower(
                    l -> Row.above0(l.hemDrop()),
                    (l, mm) -> new LowerEnd(l.hem(), l.cuffHeight(), l.strapWidth(), mm, l.growth())));

    static final Key<Boolean> CUFF = Row.section("style.cuff", "{height: {32}}").also("cuffs");

    public static final Key<Double> CUFF_HEIGHT = Row.length(
                    "style.cuff.height", 8, 200, "why.cuff-height", 15, 70, "{32}")
            .needed()
            .in(lower(
                    l -> Row.boxed(l.cuffHeight()),
                    (l, mm) -> new LowerEnd(
                            l.hem(), java.util.OptionalDouble.of(mm), l.strapWidth(), l.hemDrop(), l.growth())))
            .echoed("cuffHeight");

    static final Key<Boolean> STRAP = Row.section("style.strap", "{width: {22}}");

    /** A narrower strap cuts into the arch, a wider one folds (common practice). */
    public static final Key<Double> STRAP_WIDTH = Row.length("style.strap.width", 20, 70, "why.stirrup", 20, 60, "{22}")
            .in(lower(l -> Row.boxed(l.strapWidth()), LowerEnd::strap))
            .echoed("strapWidth");

    /** With the deepest usual turn a hem stays under 80 mm; a child's leg grows some 30 to 40 mm a year. */
    public static final Key<Double> GROWTH = Row.worn(
            Row.length("style.growth", 0, 50, "why.growth", 8, 50, "{30}")
                    .in(lower(l -> Row.above0(l.growth()), LowerEnd::growing)),
            WearingKey.GROWTH,
            LegKeys::noPlainHem);

    private LegKeys() {}

    static List<Key<?>> rows() {
        return List.of(LEG, HEM, HEM_DROP, CUFF, CUFF_HEIGHT, STRAP, STRAP_WIDTH, GROWTH);
    }

    private static <T> Lens<T> lower(Function<LowerEnd, Optional<T>> get, BiFunction<LowerEnd, T, LowerEnd> set) {
        return Row.ofStyle(s -> get.apply(s.lower()), (s, value) -> s.with(set.apply(s.lower(), value)));
    }

    private static LowerEnd with(LowerEnd l, Hem hem) {
        return new LowerEnd(hem, l.cuffHeight(), l.strapWidth(), l.hemDrop(), l.growth());
    }

    private static Style with(Style s, Leg leg) {
        return new Style(
                leg,
                s.lower(),
                s.top(),
                s.parts(),
                s.hold(),
                s.allowance(),
                s.allowances(),
                s.lay(),
                s.ease(),
                s.shifts());
    }

    private static Optional<Worn.Outcome> noPlainHem(MakeFile make) {
        LowerEnd lower = make.style().lower();
        boolean other = lower.cuffHeight().isPresent()
                || make.style().leg() == Leg.STIRRUP
                || lower.turnUp() < LowerEnd.TURN_UP;
        return other
                ? Optional.of(Worn.Outcome.hindered(Tell.said("worn.growth"), Tell.said("worn.growth-instead")))
                : Optional.empty();
    }
}
