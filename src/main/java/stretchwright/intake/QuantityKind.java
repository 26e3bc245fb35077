package stretchwright.intake;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import stretchwright.ground.Numbers;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.DecimalNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Any other quantity: years, a weight of cloth, a pressure, minutes.
 *
 * @param reader of the text with or without its unit
 * @param symbol of the unit it is kept in
 * @param isNot key of what is said where it is none
 * @param write key of how to write it
 * @param shape what an editor lets through; empty for a number, bare or with words behind it
 */
record QuantityKind(
        Function<String, OptionalDouble> reader,
        Range range,
        String symbol,
        String isNot,
        String write,
        Optional<String> shape)
        implements Kind<Double> {

    QuantityKind(Function<String, OptionalDouble> reader, Range range, String symbol, String isNot, String write) {
        this(reader, range, symbol, isNot, write, Optional.empty());
    }

    /** The same, where only texts of this pattern can be one. */
    QuantityKind only(String pattern) {
        return new QuantityKind(reader, range, symbol, isNot, write, Optional.of(pattern));
    }

    @Override
    public Optional<Double> read(Spot at) {
        return at.text()
                .flatMap(text -> new InRange(at, text, range)
                        .of(
                                reader.apply(text),
                                false,
                                Tell.said(isNot, Tell.quoted(text)),
                                Tell.said(write),
                                () -> Tell.said(
                                        "amount.allowed", shown(range.least()), shown(range.most()), range.reason())));
    }

    @Override
    public ObjectNode schema() {
        return shape.map(Schemas::matching).orElseGet(Schemas::numberOrText);
    }

    @Override
    public Said allowed() {
        Part least = Part.number(range.least(), 2);
        Part most = Part.number(range.most(), 2);
        return symbol.isEmpty()
                ? Tell.said("allowed.between", least, most)
                : Tell.said("allowed.unit", least, most, Part.text(symbol));
    }

    @Override
    public JsonNode json(Double value) {
        return DecimalNode.valueOf(Numbers.mm(value));
    }

    @Override
    public Part shown(Double value) {
        return Part.text((Numbers.plain(value) + " " + symbol).strip());
    }

    @Override
    public OptionalDouble amount(Double value) {
        return OptionalDouble.of(value);
    }

    @Override
    public Optional<Range> within() {
        return Optional.of(range);
    }
}
