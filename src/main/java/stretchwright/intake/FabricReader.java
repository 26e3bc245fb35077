package stretchwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import stretchwright.body.Measured;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.LoadCurve;
import stretchwright.ground.Numbers;
import stretchwright.ground.Quantities;
import stretchwright.ground.Unit;

/** Reads the fabric. */
final class FabricReader {
    private static final List<String> PLAIN = List.of(
            "name",
            "usable width",
            ClothShapeReader.SELVAGE,
            "on hand",
            "flaws",
            "weight",
            "stretch across",
            "stretch along",
            "load across",
            "load along",
            "recovery",
            "shrinkage across",
            "shrinkage along",
            "one way",
            "repeat along",
            "shows through at",
            "price",
            SewingReader.SETTINGS,
            ContrastReader.KEY);
    static final List<String> KEYS =
            Stream.concat(PLAIN.stream(), StretchReader.KEYS.stream()).toList();
    private static final String LOAD_EXAMPLE = "[[20 %, 3.1 N], [40 %, 6.9 N]]";
    private static final int MOST_READINGS = 100;

    private final Section section;
    private final Optional<Measured> wearer;

    private FabricReader(Section section, Optional<Measured> wearer) {
        this.section = section;
        this.wearer = wearer;
    }

    /** The wearer's own girths and lengths say what a wrap test and a pose mean; empty where they could not be read. */
    static Optional<Fabric> read(Section section, Optional<Measured> wearer) {
        return new FabricReader(section, wearer).read();
    }

    private Optional<Fabric> read() {
        section.require("usable width", "147");
        String name = section.name("name").orElse("");
        OptionalDouble width = section.length("usable width", Limits.USABLE_WIDTH);
        ClothShape shape = ClothShapeReader.read(section, width);
        OptionalDouble onHand = ClothShapeReader.onHand(section, shape);
        OptionalDouble weight = section.quantity(
                "weight",
                Quantities::clothWeight,
                "a weight of cloth",
                "Write for example 260 g/m2, or 7.7 oz/yd2.",
                Limits.WEIGHT,
                "g/m2");
        Optional<StretchReader.Found> found = new StretchReader(section, wearer).read();
        Optional<LoadCurve> loadAcross = load("load across");
        Optional<LoadCurve> loadAlong = load("load along");
        double shrinkAcross =
                section.share("shrinkage across", Limits.SHRINKAGE).orElse(0);
        double shrinkAlong = section.share("shrinkage along", Limits.SHRINKAGE).orElse(0);
        boolean oneWay = section.yes("one way").orElse(true);
        double repeat = section.length("repeat along", Limits.REPEAT).orElse(0);
        OptionalDouble showsThrough = section.share("shows through at", Limits.SHOWS_THROUGH);
        Optional<Fabric.Price> price = price(section);
        if (width.isEmpty() || found.isEmpty()) {
            return Optional.empty();
        }
        StretchReader.Found stretch = found.get();
        return Optional.of(new Fabric(new Fabric.Quality(weight, shrinkAcross, shrinkAlong), new Fabric.Roll(name, width.getAsDouble(), onHand, oneWay, repeat, price, shape), new Fabric.Test(stretch.across(), stretch.along(), loadAcross.orElseGet(() -> LoadCurve.assumed(stretch.across())), loadAlong.orElseGet(() -> LoadCurve.assumed(stretch.along())), stretch.recovery(), showsThrough, stretch.wrapped(), stretch.assumed())));
    }

    /** Readings of the hanging test, on a strip of 50 mm; empty where none are given or any is wrong. */
    private Optional<LoadCurve> load(String key) {
        Optional<Tree.Items> items = section.items(key, LOAD_EXAMPLE);
        if (items.isEmpty()) {
            return Optional.empty();
        }
        List<Tree> pairs = items.get().items();
        if (pairs.isEmpty() || pairs.size() > MOST_READINGS) {
            section.add(
                    key, "holds " + pairs.size() + " readings.", "Give 1 to " + MOST_READINGS + ", or leave it out.");
            return Optional.empty();
        }
        List<LoadCurve.Reading> readings = new ArrayList<>();
        for (Tree pair : pairs) {
            reading(key, pair).ifPresent(readings::add);
        }
        return readings.size() == pairs.size() && grows(key, readings)
                ? Optional.of(LoadCurve.through(readings))
                : Optional.empty();
    }

    private Optional<LoadCurve.Reading> reading(String key, Tree pair) {
        if (!(pair instanceof Tree.Items two
                && two.items().size() == 2
                && two.items().get(0) instanceof Tree.Text stretch
                && two.items().get(1) instanceof Tree.Text force)) {
            section.add(
                    key,
                    "a reading is a pair of stretch and force (decimals with a point, not a comma).",
                    "Write for example: " + LOAD_EXAMPLE);
            return Optional.empty();
        }
        OptionalDouble extension = section.share(key, stretch.text().strip(), Limits.LOAD_EXTENSION);
        String text = force.text().strip();
        OptionalDouble newton = section.quantity(
                key,
                text,
                Quantities.force(text),
                "a force",
                "Write it with its unit: 3.1 N, or the weight hung on: 310 g.",
                Limits.LOAD_FORCE,
                "N");
        if (extension.isEmpty() || newton.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new LoadCurve.Reading(extension.getAsDouble(), newton.getAsDouble() / LoadCurve.STRIP_WIDTH));
    }

    private boolean grows(String key, List<LoadCurve.Reading> readings) {
        for (int i = 1; i < readings.size(); i++) {
            LoadCurve.Reading before = readings.get(i - 1);
            LoadCurve.Reading now = readings.get(i);
            if (!(now.extension() > before.extension() && now.tension() > before.tension())) {
                section.add(
                        key,
                        "reading " + (i + 1) + " (" + shown(now) + ") does not grow over the one before ("
                                + shown(before) + ").",
                        "List the readings from little to much; more stretch needs more force. Hang that weight again.");
                return false;
            }
        }
        return true;
    }

    private static String shown(LoadCurve.Reading reading) {
        return Numbers.plain(reading.extension() * 100) + " %, "
                + Numbers.plain(reading.tension() * LoadCurve.STRIP_WIDTH) + " N";
    }

    /** "14.50 per m" or "12 per yd", as money per metre. */
    static Optional<Fabric.Price> price(Section section) {
        OptionalDouble perMetre = section.quantity(
                "price",
                FabricReader::perMetre,
                "a price by length",
                "Write for example 14.50 per m, or 12 per yd.",
                Limits.PRICE,
                "per m");
        return perMetre.isPresent() ? Optional.of(new Fabric.Price(perMetre.getAsDouble())) : Optional.empty();
    }

    private static OptionalDouble perMetre(String text) {
        String[] parts = text.toLowerCase(Locale.ROOT).split("\\s*(?:\\bper\\b|/)\\s*", -1);
        if (parts.length != 2) {
            return OptionalDouble.empty();
        }
        OptionalDouble money = Quantities.number(parts[0]);
        Optional<Unit> unit = Unit.of(parts[1]).filter(u -> u == Unit.M || u == Unit.YD);
        if (money.isEmpty() || unit.isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(money.getAsDouble() * 1000 / unit.get().toMm(1));
    }
}
