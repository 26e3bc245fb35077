package stretchwright.intake;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Part;
import stretchwright.ground.Quantities;
import stretchwright.ground.Unit;
import stretchwright.pattern.Style;

/** How rows of the table are written: a beginning for each kind. */
final class Row {
    private Row() {}

    /** @param why key of the reason of the range */
    static Key<Double> length(String path, double least, double most, String why, String example) {
        return Key.of(path, new LengthKind(new Range(least, most, why), Optional.empty(), false), example);
    }

    /** With what is usual, mm: a bare number outside of it that would be inside in another unit is asked about. */
    static Key<Double> length(
            String path, double least, double most, String why, double from, double to, String example) {
        return Key.of(path, lengthKind(least, most, why, from, to), example);
    }

    static LengthKind lengthKind(double least, double most, String why, double from, double to) {
        return new LengthKind(new Range(least, most, why), Optional.of(new LengthKind.Usual(from, to)), false);
    }

    /** One that may be below zero. */
    static Key<Double> signed(String path, Range range, double from, double to, String example) {
        return Key.of(path, new LengthKind(range, Optional.of(new LengthKind.Usual(from, to)), true), example);
    }

    static Key<Double> share(String path, double least, double most, String why, String example) {
        return Key.of(path, new ShareKind(new Range(least, most, why)), example);
    }

    static Key<Boolean> yes(String path) {
        return Key.of(path, new YesKind(), "true");
    }

    static Key<String> name(String path, String example) {
        return Key.of(path, new NameKind(), example);
    }

    static <T> Key<T> choice(String path, ChoiceKind<T> kind, String example) {
        return Key.of(path, kind, example);
    }

    static Key<Boolean> section(String path, String example) {
        return Key.of(path, new SectionKind(false, Optional.empty(), true), example)
                .untold();
    }

    static Key<Boolean> sectionOrNone(String path, String example) {
        return Key.of(path, new SectionKind(true, Optional.empty(), true), example)
                .untold();
    }

    /** A section instead of which the value of one of its keys may stand. */
    static Key<Boolean> sectionOr(String path, String inside, String example) {
        return Key.of(path, new SectionKind(false, Optional.of(inside), true), example)
                .untold();
    }

    static Key<List<Answers>> sections(String path, List<Key<?>> inside, int most, String example) {
        return Key.of(path, new SectionsKind(Keys.of(inside), most, false), example)
                .untold();
    }

    static QuantityKind minutes(double least, double most, String why) {
        return new QuantityKind(
                text -> Quantities.number(
                        text.endsWith("min")
                                ? text.substring(0, text.length() - 3).strip()
                                : text),
                new Range(least, most, why),
                "min",
                "minutes.is-not",
                "minutes.write");
    }

    static <T> Lens<T> ofStyle(Function<Style, Optional<T>> get, BiFunction<Style, T, Style> set) {
        return Lens.of(make -> get.apply(make.style()), (make, value) -> make.with(set.apply(make.style(), value)));
    }

    static <T> Lens<T> ofFabric(Function<Fabric, Optional<T>> get) {
        return Lens.reading(make -> get.apply(make.cloth()));
    }

    /** "14.50 per m" or "12 per yd", as money per metre. */
    static OptionalDouble perMetre(String text) {
        String[] parts = text.toLowerCase(Locale.ROOT).split("\\s*(?:\\bper\\b|/)\\s*", -1);
        if (parts.length != 2) {
            return OptionalDouble.empty();
        }
        OptionalDouble money = Quantities.number(parts[0]);
        Optional<Unit> unit = Unit.of(parts[1]).filter(u -> u == Unit.M || u == Unit.YD);
        return money.isEmpty() || unit.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(money.getAsDouble() * 1000 / unit.get().toMm(1));
    }

    /** A length to which the changes after wearing are added. */
    static Key<Double> worn(Key<Double> row, WearingKey key) {
        return worn(row, key, make -> Optional.empty());
    }

    /** Unless something speaks against it. */
    static Key<Double> worn(Key<Double> row, WearingKey key, Function<MakeFile, Optional<Worn.Outcome>> unless) {
        return row.worn(new Worn<>(key, (make, by) -> unless.apply(make).orElseGet(() -> added(row, make, by))));
    }

    private static Worn.Outcome added(Key<Double> row, MakeFile make, double by) {
        double mm = row.lens().get().apply(make).orElse(0.0) + by;
        return row.range().holds(mm)
                ? Worn.Outcome.of(row.set(make, mm))
                : Worn.Outcome.beyond(Tell.said("worn.beyond", Part.text(row.path()), Part.signed(mm)));
    }

    static Optional<Double> boxed(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }

    static OptionalDouble unboxed(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    /** A length that 0 stands for none of. */
    static Optional<Double> above0(double value) {
        return value > 0 ? Optional.of(value) : Optional.empty();
    }
}
