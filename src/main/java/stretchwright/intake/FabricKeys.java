package stretchwright.intake;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.LoadCurve;
import stretchwright.fabric.Usual;
import stretchwright.ground.Numbers;
import stretchwright.ground.Quantities;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.DecimalNode;
import tools.jackson.databind.node.ObjectNode;

/** Rows of the fabric: its quality, and how it was tested. */
public final class FabricKeys {
    /** Shares are told to a tenth of a percent. */
    private static final double SHARE_TOLD = 0.0005;

    /** g/m2: an ounce per square yard is told to a tenth, 1.7 either way. */
    private static final double WEIGHT_TOLD = 2;

    /** N/m: a force is told to a tenth of a newton, on a strip of 50 mm. */
    private static final double TENSION_TOLD = 1.01;

    /** N on a strip of 50 mm: 200 N is a heavy suitcase; leg wear stays under 15 (trade values 1.3). */
    static final QuantityKind HUNG_ON = new QuantityKind(
                    Quantities::force, new Range(0.01, 200, "why.load-force"), "N", "force.is-not", "force.write")
            .only("[0-9]\\s*(N|n|g|gf|kg|kgf)\\s*$");

    static final Key<Boolean> FABRIC = Row.section(
                    "fabric", "{usable width: {1470}, stretch across: 60 %, stretch along: 45 %}")
            .needed()
            .also("cloth");

    public static final Key<String> NAME = Row.name("fabric.name", "Heavy performance knit")
            .in(Lens.reading(m -> Optional.of(m.cloth().roll().name()).filter(n -> !n.isEmpty())))
            .echoed(Echoed.as(
                    "name",
                    m -> Optional.of(tools.jackson.databind.node.StringNode.valueOf(
                            m.cloth().roll().name()))))
            .onRoll(Roll.whereTold((a, b) -> plain(a).equals(plain(b))));

    public static final Key<Boolean> USUAL = Row.yes("fabric.usual")
            .usually(false)
            .needing(Need.STANDS_IN)
            .also("no cloth yet")
            .echoed(Echoed.as("usual", m -> told(m.cloth().usual())));

    /** g/m2; leg wear is 120 to 400 (trade values 1.3), the ends leave room. */
    public static final Key<Double> WEIGHT = Key.of(
                    "fabric.weight",
                    new QuantityKind(
                            Quantities::clothWeight,
                            new Range(40, 900, "why.weight"),
                            "g/m2",
                            "weight.is-not",
                            "weight.write"),
                    "260 g/m2")
            .in(Row.ofFabric(f -> Row.boxed(f.quality().weight())))
            .onRoll(Roll.within(WEIGHT_TOLD));

    /** Above 0: without stretch nothing here can be worn. Rib reaches 100 % in the textbooks, loose tubes 200 %. */
    static final Range STRETCH = new Range(0.01, 3.00, "why.stretch");

    public static final Key<Double> STRETCH_ACROSS = Key.of("fabric.stretch across", new ShareKind(STRETCH), "60 %")
            .needing(Need.oneOf("across"))
            .also("crosswise stretch", "stretch crosswise", "stretch widthwise")
            .in(Row.ofFabric(f -> Optional.of(f.test().stretchAcross())))
            .echoed(Echoed.<Double>as("").orAssumed(m -> m.cloth().assumesAcross()))
            .onRoll(Roll.within(SHARE_TOLD));

    public static final Key<Double> STRETCH_ALONG = Key.of("fabric.stretch along", new ShareKind(STRETCH), "45 %")
            .needing(Need.oneOf("along"))
            .also("lengthwise stretch", "stretch lengthwise")
            .in(Row.ofFabric(f -> Optional.of(f.test().stretchAlong())))
            .echoed(Echoed.<Double>as("").orAssumed(m -> m.cloth().assumesAlong()))
            .onRoll(Roll.within(SHARE_TOLD));

    static final Key<List<Double>> FOLD_ACROSS = fold("fabric.fold across", "[{100}, {160}, {102.5}]", "across");
    static final Key<List<Double>> FOLD_ALONG = fold("fabric.fold along", "[{100}, {145}, {102}]", "along");

    static final Key<Double> WRAP_HIP = wrap("fabric.wrap hip", 350, 1600, "{840}")
            .echoed(Echoed.as("wrapped", m -> number(m.cloth().test().wrapped())));
    static final Key<Double> WRAP_CALF =
            wrap("fabric.wrap calf", 120, 600, "{300}").untold();

    static final Key<Boolean> REACHES_POSE = Row.yes("fabric.reaches pose")
            .usually(false)
            .needing(Need.oneOf("along"))
            .untold();

    public static final Key<List<LoadCurve.Reading>> LOAD_ACROSS = load(
            "fabric.load across",
            "[[20 %, 3.1 N], [40 %, 6.9 N]]",
            cloth -> cloth.test().loadAcross());
    public static final Key<List<LoadCurve.Reading>> LOAD_ALONG = load(
            "fabric.load along",
            "[[20 %, 4 N], [40 %, 9.5 N]]",
            cloth -> cloth.test().loadAlong());

    public static final Key<Double> RECOVERY = Row.share("fabric.recovery", 0.01, 1.00, "why.recovery", "95 %")
            .in(Row.ofFabric(f -> Row.boxed(f.test().recovery())))
            .onRoll(Roll.within(SHARE_TOLD));

    public static final Key<Double> SHRINKAGE_ACROSS =
            shrinkage("fabric.shrinkage across", cloth -> cloth.quality().shrinkageAcross());
    public static final Key<Double> SHRINKAGE_ALONG =
            shrinkage("fabric.shrinkage along", cloth -> cloth.quality().shrinkageAlong());

    public static final Key<Double> SHOWS_THROUGH = Row.share(
                    "fabric.shows through at", 0.01, 8.00, "why.shows-through", "130 %")
            .also("see-through at", "shows through")
            .in(Row.ofFabric(f -> Row.boxed(f.test().showsThroughAt())))
            .onRoll(Roll.within(SHARE_TOLD));

    private FabricKeys() {}

    static List<Key<?>> rows() {
        List<Key<?>> rows = new java.util.ArrayList<>(List.of(FABRIC, NAME, USUAL));
        rows.addAll(RollKeys.ofFabric());
        rows.addAll(List.of(
                WEIGHT,
                STRETCH_ACROSS,
                STRETCH_ALONG,
                FOLD_ACROSS,
                FOLD_ALONG,
                WRAP_HIP,
                WRAP_CALF,
                REACHES_POSE,
                LOAD_ACROSS,
                LOAD_ALONG));
        rows.addAll(HangKeys.rows());
        rows.addAll(List.of(
                RECOVERY,
                SHRINKAGE_ACROSS,
                SHRINKAGE_ALONG,
                SHOWS_THROUGH,
                SewingKeys.SETTINGS,
                ContrastKeys.CONTRASTS));
        return rows;
    }

    static Optional<JsonNode> number(OptionalDouble share) {
        return share.isPresent()
                ? Optional.of(DecimalNode.valueOf(Numbers.share(share.getAsDouble())))
                : Optional.empty();
    }

    /** Marks on folded cloth: 100 mm or 4 in usual, pulled at most fourfold. */
    private static Key<List<Double>> fold(String path, String example, String group) {
        return Key.of(path, new LengthsKind(Row.lengthKind(20, 2000, "why.fold", 40, 600), 3, 3, "fold.three"), example)
                .needing(Need.oneOf(group))
                .untold();
    }

    private static Key<Double> wrap(String path, double from, double to, String example) {
        return Row.length(path, 10, 2750, "why.measurement", from, to, example).needing(Need.oneOf("across"));
    }

    private static Key<List<LoadCurve.Reading>> load(String path, String example, Function<Fabric, LoadCurve> curve) {
        LoadsKind kind = new LoadsKind(new ShareKind(new Range(0.01, 3.00, "why.load-extension")), HUNG_ON, 100);
        return Key.of(path, kind, example)
                .in(Row.ofFabric(f ->
                        Optional.of(curve.apply(f)).filter(c -> !c.isAssumed()).map(LoadCurve::readings)))
                .echoed(Echoed.as("", m -> Optional.of(told(curve.apply(m.cloth()), kind))))
                .onRoll(Roll.whereTold(FabricKeys::alike));
    }

    private static boolean alike(List<LoadCurve.Reading> a, List<LoadCurve.Reading> b) {
        boolean alike = a.size() == b.size();
        for (int i = 0; i < a.size() && alike; i++) {
            alike = Math.abs(a.get(i).extension() - b.get(i).extension()) <= SHARE_TOLD
                    && Math.abs(a.get(i).tension() - b.get(i).tension()) <= TENSION_TOLD;
        }
        return alike;
    }

    private static String plain(String name) {
        return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    private static JsonNode told(LoadCurve curve, LoadsKind kind) {
        ObjectNode out = Schemas.node().put("assumed", curve.isAssumed());
        out.set("readings", kind.json(curve.readings()));
        return out;
    }

    /** What was taken as usual, by its keys. */
    private static Optional<JsonNode> told(Usual usual) {
        ArrayNode out = Schemas.node().putArray("usual");
        Map<Key<?>, Boolean> all = new LinkedHashMap<>();
        all.put(RollKeys.FABRIC.width, usual.width());
        all.put(STRETCH_ACROSS, usual.across());
        all.put(STRETCH_ALONG, usual.along());
        all.forEach((key, is) -> {
            if (is) {
                out.add(key.name());
            }
        });
        return Optional.<JsonNode>of(out).filter(o -> usual.any());
    }

    private static Key<Double> shrinkage(String path, Function<Fabric, Double> get) {
        return Row.share(path, 0, 0.4999, "why.shrinkage", "2 %")
                .usually(0.0)
                .in(Row.ofFabric(f -> Optional.of(get.apply(f))))
                .onRoll(Roll.within(SHARE_TOLD));
    }
}
