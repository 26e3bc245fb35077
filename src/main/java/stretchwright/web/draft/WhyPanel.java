package stretchwright.web.draft;

import java.util.List;
import java.util.Optional;
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

    /** @param what by which it is asked in its turn; empty where the chain ends */
    public record Input(String words, String what) {}

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
                reason.inputs().stream().map(i -> input(voice, i)).toList(),
                voice.say(reason.source()));
    }

    private static Input input(Voice voice, Reason.Input input) {
        String words = voice.say(Tell.said(
                "why.input",
                input.name(),
                value(input.value(), input.unit()),
                input.from().said()));
        return new Input(words, input.from() instanceof Dimension d ? d.what().name() : "");
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
