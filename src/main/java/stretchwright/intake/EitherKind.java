package stretchwright.intake;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A word, or a value of another kind: a rise is "hip" or 4 cm.
 *
 * @param in what a value of the other kind stands for
 * @param out the value of the other kind where it is one; empty where it is a word
 * @param isNot key of what is said of a text that is neither a word nor a number; empty where the other kind says it
 * @param write key of how to write it
 */
record EitherKind<T, A>(
        ChoiceKind<T> choice,
        Kind<A> other,
        Function<A, T> in,
        Function<T, Optional<A>> out,
        Optional<String> isNot,
        Optional<String> write)
        implements Kind<T> {
    @Override
    public Optional<T> read(Spot at) {
        Optional<String> text = at.text();
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Optional<T> word = choice.find(text.get());
        if (word.isPresent()) {
            return word;
        }
        boolean number = text.get()
                .chars()
                .anyMatch(c -> Character.getType(c) == Character.OTHER_NUMBER || Character.isDigit(c));
        if (!number && isNot.isPresent()) {
            at.add(
                    Tell.said(isNot.get(), Tell.quoted(text.get())),
                    write.map(Tell::said).orElse(Said.NOTHING));
            return Optional.empty();
        }
        return other.read(at).map(in);
    }

    @Override
    public Tree carrying(Tree written, Unit unit) {
        return written instanceof Tree.Text text && choice.find(text.text()).isPresent()
                ? written
                : other.carrying(written, unit);
    }

    @Override
    public ObjectNode schema() {
        return Schemas.either(choice.schema(), other.schema());
    }

    @Override
    public Said allowed() {
        return Tell.said("allowed.or", choice.allowed(), other.allowed());
    }

    @Override
    public JsonNode json(T value) {
        return out.apply(value).map(other::json).orElseGet(() -> choice.json(value));
    }

    @Override
    public Part shown(T value) {
        return choice.values().contains(value)
                ? choice.shown(value)
                : out.apply(value).map(other::shown).orElseThrow();
    }

    @Override
    public List<String> words() {
        return choice.words();
    }

    @Override
    public String symbol() {
        return other.symbol();
    }

    @Override
    public OptionalDouble amount(T value) {
        return out.apply(value).map(other::amount).orElse(OptionalDouble.empty());
    }

    @Override
    public Optional<Range> within() {
        return other.within();
    }
}
