package stretchwright.intake;

import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.ground.Numbers;
import stretchwright.ground.Part;
import stretchwright.ground.Quantities;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.DecimalNode;
import tools.jackson.databind.node.ObjectNode;

/** A share: "60 %" is 0.6. A bare number is refused, because 0.6 and 60 would both be guesses. */
record ShareKind(Range range) implements Kind<Double> {
    static final String DEFINED = "share";

    static ObjectNode definition() {
        ObjectNode out = Schemas.either(
                Schemas.matching("^\\s*[0-9.,]+([eE][+-]?[0-9]+)?\\s*%\\s*$"),
                Schemas.node().put("const", 0));
        return out.put("description", Voice.plain().say(Tell.said("schema.share")));
    }

    @Override
    public Optional<Double> read(Spot at) {
        return at.text().flatMap(text -> read(text, at));
    }

    private Optional<Double> read(String text, Spot at) {
        OptionalDouble share = Quantities.share(text);
        OptionalDouble bare = Quantities.number(text);
        if (share.isEmpty() && bare.isPresent()) {
            at.add(Tell.said("share.no-sign", Tell.quoted(text)), Tell.said("share.sign", percent(bare.getAsDouble())));
            return Optional.empty();
        }
        return new InRange(at, text, range)
                .of(
                        share,
                        false,
                        Tell.said("share.is-not", Tell.quoted(text)),
                        Tell.said("share.write", Part.text(at.like())),
                        () -> Tell.said("amount.allowed", part(range.least()), part(range.most()), range.reason()));
    }

    /** "0.6" may have meant 60 %, "60" surely did. */
    private static Part percent(double value) {
        return part(Math.abs(value > 0 && value <= 1 ? value : value / 100));
    }

    /** With as many decimals as it has, two at most. */
    static Part part(double share) {
        int decimals = Numbers.rounded(share * 100, 2).scale();
        return Part.share(share, Math.max(0, decimals));
    }

    @Override
    public ObjectNode schema() {
        return Schemas.reference(DEFINED);
    }

    @Override
    public Said allowed() {
        return Tell.said("allowed.between", part(range.least()), part(range.most()));
    }

    @Override
    public JsonNode json(Double share) {
        return DecimalNode.valueOf(Numbers.share(share));
    }

    @Override
    public Part shown(Double share) {
        return part(share);
    }

    @Override
    public String symbol() {
        return "%";
    }

    @Override
    public OptionalDouble amount(Double share) {
        return OptionalDouble.of(100 * share);
    }

    @Override
    public Optional<Range> within() {
        return Optional.of(range);
    }
}
