package stretchwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import stretchwright.ground.Findings;
import stretchwright.ground.Grid;
import stretchwright.ground.Numbers;
import stretchwright.ground.Quantities;
import stretchwright.ground.Unit;

/**
 * One section of a make file with the keys it may have. Each question about a key gives its value, or nothing and a
 * finding with the key's full path and line; a key that is not there gives nothing and no finding.
 */
public final class Section {
    private static final int LONGEST_TEXT = 120;
    public static final String NO_NAME = "is too long, or holds control characters.";
    public static final String ANOTHER_NAME = "Use up to " + LONGEST_TEXT + " letters on one line.";

    private final Tree.Keys keys;
    private final String path;
    private final Findings findings;
    private final Optional<Unit> unit;

    /** Reports every key that is not known, with the nearest known one. */
    Section(Tree.Keys keys, String path, Findings findings, Optional<Unit> unit, List<String> known) {
        this.keys = keys;
        this.path = path;
        this.findings = findings;
        this.unit = unit;
        for (String key : keys.names()) {
            if (!known.contains(key)) {
                add(key, "is not a key that is known here.", nearest(key, known));
            }
        }
    }

    private static String nearest(String key, List<String> known) {
        return Nearest.to(key, known)
                .map(n -> "Is \"" + n + "\" meant?")
                .orElse("Known are: " + String.join(", ", known) + ".");
    }

    /** Of bare numbers, where the file names one. */
    Optional<Unit> unit() {
        return unit;
    }

    boolean has(String key) {
        return keys.entries().containsKey(key);
    }

    List<String> names() {
        return keys.names();
    }

    String path(String key) {
        return key.isEmpty() ? path : Echo.path(path, key);
    }

    /** A finding about a key of this section. */
    void add(String key, String problem, String remedy) {
        Tree at = keys.entries().get(key);
        int line = at == null ? keys.line() : at.line();
        findings.add(path(key), (at == null ? "" : "line " + line + ": ") + problem, remedy);
    }

    /** How many findings there are so far, of all sections. */
    int problems() {
        return findings.all().size();
    }

    void require(String key, String example) {
        if (!has(key)) {
            add(key, "is missing.", "Write for example: " + key + ": " + example);
        }
    }

    /** The single value, stripped; empty and a finding where it is a list, a section or blank. */
    Optional<String> text(String key) {
        Tree at = keys.entries().get(key);
        if (at == null) {
            return Optional.empty();
        }
        if (!(at instanceof Tree.Text value)) {
            add(key, "is " + at.kind() + "; a single value is wanted.", "");
            return Optional.empty();
        }
        String text = value.text().strip();
        if (isEmpty(at)) {
            add(key, "has no value.", "Give one, or leave the key out.");
            return Optional.empty();
        }
        return Optional.of(text);
    }

    private static boolean isEmpty(Tree at) {
        return at instanceof Tree.Text value
                && List.of("", "~", "null").contains(value.text().strip());
    }

    /** A name for people: short, without control characters. */
    Optional<String> name(String key) {
        Optional<String> text = text(key);
        if (text.isPresent() && !isName(text.get())) {
            add(key, NO_NAME, ANOTHER_NAME);
            return Optional.empty();
        }
        return text;
    }

    public static boolean isName(String text) {
        return text.length() <= LONGEST_TEXT && text.codePoints().noneMatch(Echo::isNoLetter);
    }

    Optional<Section> section(String key, List<String> known) {
        Tree at = keys.entries().get(key);
        if (at == null) {
            return Optional.empty();
        }
        if (at instanceof Tree.Keys inside) {
            return Optional.of(new Section(inside, path(key), findings, unit, known));
        }
        add(
                key,
                (isEmpty(at) ? "has no value" : "is " + at.kind()) + "; a section with keys is wanted.",
                "Known are: " + String.join(", ", known) + ".");
        return Optional.empty();
    }

    Optional<Tree.Items> items(String key, String example) {
        Tree at = keys.entries().get(key);
        if (at == null) {
            return Optional.empty();
        }
        if (at instanceof Tree.Items items) {
            return Optional.of(items);
        }
        add(
                key,
                (isEmpty(at) ? "has no value" : "is " + at.kind()) + "; a list is wanted.",
                "Write for example: " + example);
        return Optional.empty();
    }

    /** The sections of a list, each with the same keys; a finding where the list holds something else. */
    List<Section> sections(String key, List<String> known, int most, String example) {
        List<Section> out = new ArrayList<>();
        List<Tree> all = items(key, example).map(Tree.Items::items).orElse(List.of());
        if (all.size() > most) {
            add(key, "lists " + all.size() + " of them.", "Give up to " + most + ".");
            return out;
        }
        for (Tree item : all) {
            if (item instanceof Tree.Keys inside) {
                out.add(new Section(inside, path(key), findings, unit, known));
            } else {
                add(key, "holds " + item.kind() + "; sections are wanted.", "Write for example: " + example);
            }
        }
        return out;
    }

    /** Whether a single value stands there. */
    boolean isValue(String key) {
        return keys.entries().get(key) instanceof Tree.Text;
    }

    boolean isSection(String key) {
        return keys.entries().get(key) instanceof Tree.Keys;
    }

    /** One of the given words. */
    <T> Optional<T> choice(String key, List<T> values, Function<T, String> word) {
        Optional<String> text = text(key);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Optional<T> found =
                values.stream().filter(v -> word.apply(v).equals(text.get())).findFirst();
        if (found.isEmpty()) {
            String words = values.stream().map(word).collect(Collectors.joining(", "));
            add(key, Echo.quoted(text.get()) + " is not one of the words known here.", "Choose: " + words + ".");
        }
        return found;
    }

    Optional<Boolean> yes(String key) {
        return choice(key, List.of(true, false), b -> b.toString());
    }

    /** One item of a list, to be asked for as if it stood alone under the key. */
    Section alone(String key, Tree item) {
        return new Section(new Tree.Keys(Map.of(key, item), item.line()), path, findings, unit, List.of(key));
    }

    /** One length or a list of them, in mm; empty where one of them is wrong. */
    List<Double> lengths(String key, Limits.Range range, int most) {
        if (!(keys.entries().get(key) instanceof Tree.Items list)) {
            OptionalDouble one = length(key, range);
            return one.isPresent() ? List.of(one.getAsDouble()) : List.of();
        }
        if (list.items().isEmpty() || list.items().size() > most) {
            add(key, "lists " + list.items().size() + " readings.", "Give one to " + most + ".");
            return List.of();
        }
        List<Double> all = new ArrayList<>();
        for (Tree item : list.items()) {
            alone(key, item).length(key, range).ifPresent(all::add);
        }
        return all.size() == list.items().size() ? all : List.of();
    }

    /** The texts of a list, or the single text as a list of one. */
    List<String> texts(String key, String example) {
        if (keys.entries().get(key) instanceof Tree.Text) {
            return text(key).map(List::of).orElse(List.of());
        }
        List<String> all = new ArrayList<>();
        for (Tree item : items(key, example).map(Tree.Items::items).orElse(List.of())) {
            if (item instanceof Tree.Text text) {
                all.add(text.text().strip());
            } else {
                add(key, "holds " + item.kind() + "; words are wanted.", "Write for example: " + example);
            }
        }
        return all;
    }

    /** A length in mm, on the 0.01 mm grid (58 in is 1473.2 mm to the last digit); a bare number is in the file's unit. */
    OptionalDouble length(String key, Limits.Range range) {
        Optional<String> text = text(key);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (unit.isEmpty() && Quantities.number(text.get()).isPresent()) {
            return OptionalDouble.empty(); // the missing unit is a finding already
        }
        OptionalDouble mm = Quantities.length(text.get(), unit.orElse(Unit.MM));
        String remedy = "Write a number in " + unit.map(Unit::symbol).orElse("the file's unit")
                + ", or with its own unit: \"13 1/2 in\", \"4 cm\" (mm, cm, m, in, yd).";
        OptionalDouble read = within(key, text.get(), mm, "a length", remedy, range, this::shownLength);
        return read.isPresent() ? OptionalDouble.of(Grid.snap(read.getAsDouble())) : read;
    }

    /** A length that may be negative: "-1 cm" lowers, "+1 cm" or "1 cm" raises. */
    OptionalDouble signedLength(String key, Limits.Range range) {
        Optional<String> text = text(key);
        if (text.isEmpty() || (unit.isEmpty() && Quantities.number(text.get()).isPresent())) {
            return OptionalDouble.empty();
        }
        OptionalDouble mm = Quantities.length(text.get(), unit.orElse(Unit.MM));
        if (mm.isEmpty() || !range.holds(mm.getAsDouble())) {
            add(
                    key,
                    Echo.quoted(text.get()) + (mm.isEmpty() ? " is not a length." : " is out of range."),
                    "Allowed is " + shownLength(range.least()) + " to +" + shownLength(range.most()) + ": "
                            + range.why() + ".");
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Grid.snap(mm.getAsDouble()));
    }

    /** A share: "60 %" gives 0.6. */
    OptionalDouble share(String key, Limits.Range range) {
        Optional<String> text = text(key);
        return text.isEmpty() ? OptionalDouble.empty() : share(key, text.get(), range);
    }

    OptionalDouble share(String key, String text, Limits.Range range) {
        OptionalDouble share = Quantities.share(text);
        if (share.isEmpty() && Quantities.number(text).isPresent()) {
            add(key, Echo.quoted(text) + " has no unit.", "Write the share with its sign: " + asPercent(text) + ".");
            return share;
        }
        String remedy = "Write a share with its sign, such as 60 %.";
        return within(key, text, share, "a share", remedy, range, Section::shownShare);
    }

    /** "0.6" may have meant 60 %, "60" surely did. */
    private static String asPercent(String text) {
        double value = Quantities.number(text).orElse(60);
        double percent = value > 0 && value <= 1 ? value * 100 : value;
        return Numbers.plain(Math.abs(percent)) + " %";
    }

    /** Any other quantity: read by the given reader, shown with the given unit. */
    OptionalDouble quantity(
            String key,
            Function<String, OptionalDouble> reader,
            String what,
            String remedy,
            Limits.Range range,
            String symbol) {
        Optional<String> text = text(key);
        return text.isEmpty()
                ? OptionalDouble.empty()
                : within(key, text.get(), reader.apply(text.get()), what, remedy, range, v -> shown(v, symbol));
    }

    OptionalDouble quantity(
            String key,
            String text,
            OptionalDouble value,
            String what,
            String remedy,
            Limits.Range range,
            String symbol) {
        return within(key, text, value, what, remedy, range, v -> shown(v, symbol));
    }

    private OptionalDouble within(
            String key,
            String text,
            OptionalDouble value,
            String what,
            String remedy,
            Limits.Range range,
            Function<Double, String> shown) {
        String wrong = range.whatIsWrong(text, value, what);
        if (wrong == null) {
            return value;
        }
        if (value.isEmpty()) {
            add(key, wrong, remedy);
        } else {
            String between = shown.apply(range.least()) + " to " + shown.apply(range.most());
            add(key, wrong, "Allowed is " + between + ": " + range.why() + ".");
        }
        return OptionalDouble.empty();
    }

    String shownLength(double mm) {
        Unit shown = unit.orElse(Unit.MM);
        return shown(shown.fromMm(mm), shown.symbol());
    }

    private static String shownShare(double share) {
        return Numbers.plain(share * 100) + " %";
    }

    private static String shown(double value, String symbol) {
        return (Numbers.plain(value) + " " + symbol).strip();
    }
}
