package stretchwright.intake;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Parts.Pocket;

/** Rows of the parts: into which the leg is cut, and what is added to it. */
public final class PartKeys {
    /** What a gusset is where it is added after wearing, mm. */
    private static final Parts.Gusset AFTER_WEARING = new Parts.Gusset(75, 50);

    public static final Key<Parts.SideSeam> SIDE_SEAM = Row.choice(
                    "style.side seam",
                    ChoiceKind.of(Parts.SideSeam.class)
                            .also(Parts.SideSeam.NONE, "no")
                            .also(Parts.SideSeam.SHAPED, "with side seam"),
                    "shaped")
            .usually(Parts.SideSeam.NONE)
            .in(parts(p -> Optional.of(p.sideSeam()), Parts::with));

    static final Key<Boolean> PANEL =
            Row.sectionOrNone("style.panel", "{width: {60}}").also("side panel", "stripe");

    /** Finished width of a strip along the side: narrower cannot be sewn, wider is no strip (common practice). */
    public static final Key<Double> PANEL_WIDTH = Row.length("style.panel.width", 10, 300, "why.panel", 20, 150, "{60}")
            .needed()
            .in(parts(p -> Row.boxed(p.panelWidth()), Parts::withPanel))
            .echoed("panelWidth");

    public static final Key<Boolean> GUSSET = Row.sectionOrNone("style.gusset", "{length: {150}, width: {60}}")
            .in(parts(p -> Optional.of(p.gusset().isPresent()), (p, yes) -> yes ? added(p) : p))
            .wornOnce(WearingKey.GUSSET, true, make -> Optional.empty());

    public static final Key<Double> GUSSET_LENGTH = Row.length(
                    "style.gusset.length", 20, 400, "why.gusset", 50, 260, "{150}")
            .needed()
            .in(parts(
                    p -> p.gusset().map(Parts.Gusset::length),
                    (p, mm) -> p.with(new Parts.Gusset(
                            mm, p.gusset().orElse(AFTER_WEARING).width()))))
            .echoed("gusset.length");

    public static final Key<Double> GUSSET_WIDTH = Row.length(
                    "style.gusset.width", 20, 400, "why.gusset", 30, 160, "{60}")
            .needed()
            .in(parts(
                    p -> p.gusset().map(Parts.Gusset::width),
                    (p, mm) -> p.with(
                            new Parts.Gusset(p.gusset().orElse(AFTER_WEARING).length(), mm))))
            .echoed("gusset.width");

    public static final Key<Boolean> KNEE_SHAPING = Row.yes("style.knee shaping")
            .usually(false)
            .also("shaped knee")
            .in(parts(
                    p -> Optional.of(p.kneeShaping()),
                    (p, yes) -> new Parts(p.sideSeam(), p.panelWidth(), p.gusset(), yes, p.pockets())));

    static final Key<Pocket.Kind> POCKET_KIND = Row.choice(
                    "kind",
                    ChoiceKind.of(Arrays.asList(Pocket.Kind.values()), Pocket.Kind::word)
                            .not("key", "pocket.key"),
                    "phone")
            .worded("pocket.kind")
            .needed();

    /** A key is smaller, a shin pad larger than what is sewn onto a legging (common practice). */
    static final Key<Double> POCKET_WIDTH = Row.length("width", 30, 400, "why.pocket", 60, 180, "{90}")
            .worded("pocket.width")
            .needed();

    static final Key<Double> POCKET_HEIGHT = Row.length("height", 30, 400, "why.pocket", 60, 350, "{160}")
            .worded("pocket.height")
            .needed();

    /** Gel pads are about 5 mm, foam about 13 (makers-troubles 5.3); 60 mm is a cushion. */
    static final Key<Double> POCKET_THICKNESS = Row.length("thickness", 0, 60, "why.pad", 2, 40, "{5}")
            .worded("pocket.thickness")
            .needing(Need.when("needed.pad"))
            .also("thick");

    static final Key<List<Answers>> POCKETS = Key.of(
                    "style.pockets",
                    new SectionsKind(
                            Keys.of(List.of(POCKET_KIND, POCKET_WIDTH, POCKET_HEIGHT, POCKET_THICKNESS)), 8, true),
                    "[{kind: phone, width: {90}, height: {160}}]")
            .also("pocket")
            .in(parts(
                    p -> Optional.of(p.pockets().stream().map(PartKeys::answers).toList()), (p, all) -> p));

    private PartKeys() {}

    static List<Key<?>> rows() {
        return List.of(SIDE_SEAM, PANEL, PANEL_WIDTH, GUSSET, GUSSET_LENGTH, GUSSET_WIDTH, KNEE_SHAPING, POCKETS);
    }

    private static <T> Lens<T> parts(Function<Parts, Optional<T>> get, BiFunction<Parts, T, Parts> set) {
        return Row.ofStyle(s -> get.apply(s.parts()), (s, value) -> s.with(set.apply(s.parts(), value)));
    }

    private static Parts added(Parts parts) {
        return parts.gusset().isPresent() ? parts : parts.with(AFTER_WEARING);
    }

    private static Answers answers(Pocket pocket) {
        return Answers.NONE
                .with(POCKET_KIND.path(), pocket.kind())
                .with(POCKET_WIDTH.path(), pocket.width())
                .with(POCKET_HEIGHT.path(), pocket.height())
                .with(POCKET_THICKNESS.path(), pocket.thickness());
    }
}
