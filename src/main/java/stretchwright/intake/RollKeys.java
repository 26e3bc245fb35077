package stretchwright.intake;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** Rows of a roll or a remnant: how much of the cloth there is, and which way it lies. The fabric has them, and each contrast. */
public final class RollKeys {
    private static final Range ON_CLOTH = new Range(0, 200_000, "why.on-cloth");
    private static final Range FLAW = new Range(1, 10_000, "why.flaw");

    static final Key<Double> FROM_LEFT = place("from left", "{300}");
    static final Key<Double> FROM_END = place("from end", "{520}");
    static final Key<Double> WIDE = size("wide", "{10}");
    static final Key<Double> LONG = size("long", "{20}");

    /** Those of the fabric. */
    public static final RollKeys FABRIC = new RollKeys("fabric.");

    /** Those of a contrast, from the list on; words and ranges are the fabric's. */
    static final RollKeys CONTRAST = new RollKeys("");

    public final Key<Double> width;
    final Key<Double> selvage;
    final Key<Double> onHand;
    final Key<Polygon> outline;
    final Key<List<Answers>> flaws;
    final Key<Boolean> oneWay;
    final Key<Double> repeat;
    final Key<Double> price;

    private RollKeys(String at) {
        width = worded(width(at + "usable width"));
        selvage = worded(selvage(at + "selvage"));
        onHand = worded(onHand(at + "on hand"));
        outline = worded(outline(at + "on hand.outline"));
        flaws = worded(flaws(at + "flaws"));
        oneWay = worded(Row.yes(at + "one way")
                .in(of(f -> Optional.of(f.roll().oneWay())))
                .onRoll(Roll.same(Roll.About.CLOTH)));
        repeat = worded(repeat(at + "repeat along"));
        price = worded(price(at + "price"));
    }

    private static <T> Key<T> worded(Key<T> key) {
        return key.worded("fabric." + key.path().replace("fabric.", "").replace(' ', '-'));
    }

    List<Key<?>> rows() {
        return List.of(width, onHand, outline, selvage, flaws, oneWay, repeat, price);
    }

    static List<Key<?>> ofFabric() {
        return List.of(
                FABRIC.width.needing(Need.unlessUsual("width")),
                FABRIC.onHand,
                FABRIC.outline,
                FABRIC.selvage,
                FABRIC.flaws,
                FABRIC.oneWay.usually(true),
                FABRIC.repeat.usually(0.0),
                FABRIC.price);
    }

    private static <T> Lens<T> of(Function<Fabric, Optional<T>> get) {
        return Row.ofFabric(get);
    }

    /** A remnant of 200 mm to the widest cloths sold, 4 m curtain widths (common practice). */
    private static Key<Double> width(String path) {
        return Row.length(path, 200, 4000, "why.usable-width", 700, 1900, "{1470}")
                .also("width", "fabric width", "cloth width")
                .in(of(f -> Optional.of(f.roll().usableWidth())))
                .onRoll(Roll.same(Roll.About.CLOTH));
    }

    private static Key<Double> onHand(String path) {
        return Row.length(path, 50, 200_000, "why.on-hand", 200, 30_000, "1.6 m")
                .also("length on hand")
                .in(of(f -> Row.boxed(f.roll().onHand())));
    }

    private static Key<Polygon> outline(String path) {
        LengthKind corner = new LengthKind(ON_CLOTH, Optional.empty(), false);
        return Key.of(path, new CornersKind(corner, 60), "[[{0}, {0}], [{1400}, {0}], [{1400}, {950}], [{0}, {1200}]]")
                .needed()
                .in(of(f -> f.roll().shape().outline()))
                .echoed("outline")
                .onRoll(Roll.same(Roll.About.CLOTH));
    }

    private static Key<Double> selvage(String path) {
        return Row.length(path, 0, 100, "why.selvage", 3, 40, "{15}")
                .usually(0.0)
                .in(of(f -> Row.above0(f.roll().shape().selvage())))
                .onRoll(Roll.same(Roll.About.CLOTH));
    }

    private static Key<List<Answers>> flaws(String path) {
        return Row.sections(
                        path,
                        List.of(FROM_LEFT, FROM_END, WIDE, LONG),
                        50,
                        "[{from left: {300}, from end: {520}, wide: {10}, long: {20}}]")
                .in(of(f -> Optional.of(f.roll().shape().flaws())
                        .filter(all -> !all.isEmpty())
                        .map(all -> all.stream().map(RollKeys::flaw).toList())))
                .echoed(Echoed.as(
                        "flaws",
                        m -> Optional.of(m.fabric().roll().shape().flaws())
                                .filter(all -> !all.isEmpty())
                                .map(RollKeys::corners)))
                .onRoll(Roll.same(Roll.About.CLOTH));
    }

    private static Answers flaw(Polygon box) {
        Point least = new Point(box.box().minX(), box.box().minY());
        return Answers.NONE
                .with(FROM_LEFT.path(), least.x())
                .with(FROM_END.path(), least.y())
                .with(WIDE.path(), box.box().maxX() - least.x())
                .with(LONG.path(), box.box().maxY() - least.y());
    }

    private static ArrayNode corners(List<Polygon> all) {
        CornersKind kind = new CornersKind(new LengthKind(ON_CLOTH, Optional.empty(), false), 60);
        ArrayNode out = JsonNodeFactory.instance.arrayNode();
        all.forEach(f -> out.add(kind.json(f)));
        return out;
    }

    private static Key<Double> repeat(String path) {
        return Row.length(path, 0, 2000, "why.repeat", 5, 1000, "{320}")
                .also("print repeat", "repeat")
                .in(of(f -> Optional.of(f.roll().repeatAlong())))
                .onRoll(Roll.same(Roll.About.CLOTH));
    }

    private static Key<Double> price(String path) {
        QuantityKind kind = new QuantityKind(
                        Row::perMetre, new Range(0, 100_000, "why.price"), "per m", "price.is-not", "price.write")
                .only("(per|/)\\s*(m|yd)");
        return Key.of(path, kind, "14.50 per m")
                .in(of(f -> f.roll().price().map(Fabric.Price::perMetre)))
                .untold();
    }

    /** From the edge of the usable width or of a remnant, or from the near cut end. */
    private static Key<Double> place(String name, String example) {
        return Key.of(name, new LengthKind(ON_CLOTH, Optional.empty(), false), example)
                .worded("flaw." + name.replace(' ', '-'))
                .needed();
    }

    private static Key<Double> size(String name, String example) {
        return Key.of(name, new LengthKind(FLAW, Optional.empty(), false), example)
                .worded("flaw." + name)
                .needed();
    }
}
