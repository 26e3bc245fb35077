package stretchwright.intake;

import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.LongNode;
import tools.jackson.databind.node.ObjectNode;

/** A whole number; without a range any that the machine holds. */
record WholeKind(Optional<Range> range) implements Kind<Long> {
    @Override
    public Optional<Long> read(Spot at) {
        return at.text().flatMap(text -> read(text, at));
    }

    private Optional<Long> read(String text, Spot at) {
        Optional<Long> whole = whole(text);
        if (whole.isEmpty()) {
            at.add(Tell.said("whole.is-not", Tell.quoted(text)), at.likeThis());
            return whole;
        }
        return range.map(r -> new InRange(at, text, r)
                        .of(
                                OptionalDouble.of(whole.get()),
                                false,
                                Tell.said("whole.is-not", Tell.quoted(text)),
                                at.likeThis(),
                                () -> Tell.said("amount.allowed", part(r.least()), part(r.most()), r.reason()))
                        .map(Double::longValue))
                .orElse(whole);
    }

    private static Optional<Long> whole(String text) {
        try {
            return Optional.of(Long.parseLong(text));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    private static Part part(double value) {
        return Part.number(value, 0);
    }

    @Override
    public ObjectNode schema() {
        ObjectNode out = Schemas.node();
        out.putArray("type").add("integer").add("string");
        return out;
    }

    @Override
    public Said allowed() {
        return range.map(r -> Tell.said("allowed.between", part(r.least()), part(r.most())))
                .orElseGet(() -> Tell.said("allowed.whole"));
    }

    @Override
    public JsonNode json(Long value) {
        return LongNode.valueOf(value);
    }

    @Override
    public Part shown(Long value) {
        return Part.count(value);
    }

    @Override
    public OptionalDouble amount(Long value) {
        return OptionalDouble.of(value);
    }

    @Override
    public Optional<Range> within() {
        return range;
    }
}
