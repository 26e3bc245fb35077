package stretchwright.web.ask;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Doubt;
import stretchwright.body.Measure;
import stretchwright.body.Measuring;
import stretchwright.body.Value;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.intake.MakeFile;
import stretchwright.make.Make;
import stretchwright.make.Session;
import stretchwright.web.form.Form;

/** The answers so far as a make, what is not answered yet as usual: what is wrong with them, and what they let expect. */
final class Trial {
    /** Stands in while nothing of the kind was answered; nothing is told of it. */
    private static final Map<String, String> USUAL =
            Map.of("name", "x", "unit", "cm", "wearer.figure", "woman", "fabric.usual", "true");

    private Trial() {}

    /** The text of the make as it would be now. */
    static String text(Form answers) {
        Map<String, String> lacking = new LinkedHashMap<>();
        USUAL.forEach((key, value) -> {
            if (answers.value(key).isBlank()) {
                lacking.put(key, value);
            }
        });
        return answers.with(lacking).makeText();
    }

    /** Of these keys what is wrong, as far as it can be known now. */
    static List<Finding> wrong(Form answers, List<String> keys) {
        try {
            Session.of(read(answers)).body();
            return List.of();
        } catch (BadInput e) {
            return e.findings().stream()
                    .filter(f -> keys.stream().anyMatch(k -> f.key().equals(k)))
                    .toList();
        }
    }

    /** The body as far as it is known; empty before the first measure, or where something is wrong. */
    static Optional<Body> body(Form answers) {
        try {
            return Optional.of(Session.of(read(answers)).body());
        } catch (BadInput e) {
            return Optional.empty();
        }
    }

    /** What the other answers let expect of a measure. */
    static Optional<Value> expected(Form answers, Measure measure) {
        return body(answers.with(Map.of("wearer.measurements." + measure.term(), "")))
                .map(b -> b.value(measure));
    }

    /** Why a measure that was taken is doubted; empty where it is not. */
    static Optional<Doubt> doubt(Body body, Measure measure) {
        return Measuring.doubts(body).stream()
                .filter(d -> d.measure() == measure)
                .findFirst();
    }

    private static MakeFile read(Form answers) {
        return Make.read("new", text(withoutBoot(answers)).getBytes(StandardCharsets.UTF_8));
    }

    /** A boot that is measured in part would be found wanting; its values are checked when all are there. */
    private static Form withoutBoot(Form answers) {
        boolean whole = !answers.value("boot.ankle to hem").isBlank();
        Map<String, String> left = new LinkedHashMap<>();
        if (!whole) {
            answers.typed().keySet().stream().filter(k -> k.startsWith("boot.")).forEach(k -> left.put(k, ""));
            left.put("style.leg", answers.value("style.leg").equals("over boot") ? "" : answers.value("style.leg"));
        }
        return answers.with(left);
    }
}
