package stretchwright.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import tools.jackson.databind.JsonNode;

/**
 * A row of the table of keys: all that is known of one key of the make file. What is added to a key later (a label in
 * another language, a range, a word that means the same) is added here and nowhere else.
 *
 * @param path in full: "style.waistband.height"; of a key inside a list from the list on
 * @param words under which its label, its help and what else is told of it stand in this room's sentences
 * @param usual what is taken where it is left out; empty where nothing is, or where it depends on other keys
 * @param example as it is written, lengths in mm between braces: "{1470}"
 * @param synonyms everyday words for its last step, which are understood too
 * @param lens where it lives in a make
 * @param echo how the report repeats it
 * @param roll whether makes that are laid on one roll must agree in it
 * @param worn how it may be changed after wearing
 */
public record Key<T>(
        String path,
        Kind<T> kind,
        String words,
        List<Part> filled,
        Need need,
        Optional<T> usual,
        String example,
        List<String> synonyms,
        Lens<T> lens,
        Echoed<T> echo,
        Roll<T> roll,
        Optional<Worn<T>> worn) {
    public Key {
        filled = List.copyOf(filled);
        synonyms = List.copyOf(synonyms);
    }

    /** A free key without usual value, kept with the answers, repeated under its own name. */
    static <T> Key<T> of(String path, Kind<T> kind, String example) {
        return new Key<>(
                path,
                kind,
                path.replace(' ', '-'),
                List.of(),
                Need.FREE,
                Optional.empty(),
                example,
                List.of(),
                Lens.inAnswers(path),
                Echoed.plainly(),
                Roll.any(),
                Optional.empty());
    }

    /** The last step: "height". */
    public String name() {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    /** The section it stands in: "style.waistband"; empty at the top. */
    public String section() {
        int dot = path.lastIndexOf('.');
        return dot < 0 ? "" : path.substring(0, dot);
    }

    /** "height", "usableWidth". */
    String camel() {
        StringBuilder out = new StringBuilder();
        for (String word : name().split("[ -]")) {
            out.append(
                    out.isEmpty() ? word : word.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + word.substring(1));
        }
        return out.toString();
    }

    /** What the answers hold under it. */
    public Optional<T> of(Answers answers) {
        return answers.at(path);
    }

    /** Of a key whose kind has one. */
    public Range range() {
        return kind.within().orElseThrow();
    }

    /** The value in a make, as the report repeats it; empty where the make has none or the report leaves it out. */
    public Optional<JsonNode> echo(MakeFile make) {
        return !echo.told()
                ? Optional.empty()
                : echo.value()
                        .map(v -> v.apply(make))
                        .orElseGet(() -> lens.get().apply(make).map(kind::json));
    }

    /** How a page asks for it. */
    public Kind.Input input() {
        return kind.input();
    }

    /** The key whose value stands here where no section does: of "lay" that is its "way"; empty where none is meant. */
    public Optional<Key<?>> whereValueStands(Keys table) {
        return kind.instead().isPresent()
                ? table.find(path + "." + kind.instead().get())
                : kind.input() == Kind.Input.SECTION || kind.input() == Kind.Input.SECTIONS
                        ? Optional.empty()
                        : Optional.of(this);
    }

    /** Of a list of sections the keys of one; without a row otherwise. */
    public Keys parts() {
        return kind.parts();
    }

    /** Under which name inside its section the report repeats it. */
    public String echoName() {
        return echo.name().isEmpty() ? camel() : echo.name();
    }

    public Said label() {
        return Tell.said(words + ".label", filled.toArray(Part[]::new));
    }

    /** One line: what it is, or how it is found. */
    public Said help() {
        return Tell.said(words + ".help");
    }

    /** An example that is true in this unit: "usable width: 147"; without a unit lengths carry their own. */
    public String like(Optional<Unit> unit) {
        return name() + ": " + Example.of(example, unit);
    }

    /** The example's value in this unit. */
    public String example(Unit unit) {
        return Example.of(example, Optional.of(unit));
    }

    /** Whether a name in a file means this key. */
    public boolean isCalled(String name) {
        return name().equals(name) || synonyms.contains(name);
    }

    Key<T> needed() {
        return needing(Need.NEEDED);
    }

    Key<T> needing(Need other) {
        return new Key<>(path, kind, words, filled, other, usual, example, synonyms, lens, echo, roll, worn);
    }

    Key<T> usually(T value) {
        return new Key<>(
                path, kind, words, filled, need, Optional.of(value), example, synonyms, lens, echo, roll, worn);
    }

    /** With everyday words that mean it. */
    Key<T> also(String... everyday) {
        List<String> more = new ArrayList<>(synonyms);
        more.addAll(Arrays.asList(everyday));
        return new Key<>(path, kind, words, filled, need, usual, example, more, lens, echo, roll, worn);
    }

    /** Its label and help shared with other keys; what tells them apart fills the gap of the label. */
    Key<T> worded(String shared, Part... gaps) {
        return new Key<>(
                path, kind, shared, Arrays.asList(gaps), need, usual, example, synonyms, lens, echo, roll, worn);
    }

    Key<T> in(Lens<T> other) {
        return new Key<>(path, kind, words, filled, need, usual, example, synonyms, other, echo, roll, worn);
    }

    Key<T> echoed(Echoed<T> other) {
        return new Key<>(path, kind, words, filled, need, usual, example, synonyms, lens, other, roll, worn);
    }

    /** Under another name in the report. */
    Key<T> echoed(String name) {
        return echoed(Echoed.as(name));
    }

    /** Not repeated in the report. */
    Key<T> untold() {
        return echoed(Echoed.not());
    }

    Key<T> onRoll(Roll<T> other) {
        return new Key<>(path, kind, words, filled, need, usual, example, synonyms, lens, echo, other, worn);
    }

    Key<T> worn(Worn<T> other) {
        return new Key<>(
                path, kind, words, filled, need, usual, example, synonyms, lens, echo, roll, Optional.of(other));
    }

    /** It may become this after wearing, once, unless something speaks against it. */
    Key<T> wornOnce(WearingKey key, T becomes, Function<MakeFile, Optional<Worn.Outcome>> unless) {
        return worn(new Worn<>(
                key, (make, once) -> unless.apply(make).orElseGet(() -> Worn.Outcome.of(set(make, becomes)))));
    }

    /** The make with another value. */
    MakeFile set(MakeFile make, T value) {
        return lens.set().orElseThrow().apply(make, value);
    }
}
