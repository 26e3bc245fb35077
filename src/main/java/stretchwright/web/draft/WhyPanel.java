package stretchwright.web.draft;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Measure;
import stretchwright.ground.Part;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Reason;
import stretchwright.web.frame.Opened;

/**
 * Why a number is what it is.
 *
 * @param inputs what went in, one line each
 * @param source where the rule comes from
 */
public record WhyPanel(String title, String rule, List<Input> inputs, String source) {
    public WhyPanel {
        inputs = List.copyOf(inputs);
    }

    /**
     * @param what by which it is asked in its turn; empty where the chain ends
     * @param measured where it is measured; empty where it was, or cannot be
     */
    public record Input(String words, String what, String measured) {}

    /** @param asked name of a dimension, as the address has it */
    static Optional<WhyPanel> of(Opened make, String asked) {
        return make.session().pattern().reasons().stream()
                .filter(r -> r.dimension().what().name().equals(asked))
                .findFirst()
                .map(r -> panel(make, r));
    }

    private static WhyPanel panel(Opened make, Reason reason) {
        Voice voice = make.voice();
        String title =
                voice.say(Tell.said("why.title", reason.dimension().said(), value(reason.value(), reason.unit())));
        return new WhyPanel(
                title,
                voice.say(reason.rule()),
                reason.inputs().stream().map(i -> input(make, i)).toList(),
                voice.say(reason.source()));
    }

    private static Input input(Opened make, Reason.Input input) {
        String words = make.voice()
                .say(Tell.said(
                        "why.input",
                        input.name(),
                        value(input.value(), input.unit()),
                        input.from().said()));
        return new Input(words, input.from() instanceof Dimension d ? d.what().name() : "", measured(make, input));
    }

    private static String measured(Opened make, Reason.Input input) {
        return Arrays.stream(Measure.values())
                .filter(m -> input.from() == Reason.Origin.ESTIMATED && m.said().equals(input.name()))
                .findFirst()
                .map(m -> Guessed.to(make, m))
                .orElse("");
    }

    private static Part value(double value, String unit) {
        return switch (unit) {
            case "mm" -> Part.length(value);
            case "%" -> Part.share(value / 100);
            case "" -> Part.number(value, 2);
            default -> Part.text(Voice.of(Unit.MM).say(Part.number(value, 1)) + " " + unit);
        };
    }
}
