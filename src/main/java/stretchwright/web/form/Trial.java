package stretchwright.web.form;

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

/** What is known so far as a make, what is not answered yet as usual: what is wrong with it, and what it lets expect. */
public final class Trial {
    /** Stands in while nothing of the kind was answered; nothing is told of it. */
    private static final Map<String, String> USUAL =
            Map.of("name", "x", "unit", "cm", "wearer.figure", "woman", "fabric.usual", "true");

    private Trial() {}

    /** The text of the make as it would be now. */
    public static String text(Form answers) {
        Map<String, String> lacking = new LinkedHashMap<>();
        USUAL.forEach((key, value) -> {
            if (answers.value(key).isBlank()) {
                lacking.put(key, value);
            }
        });
        return answers.with(lacking).makeText();
    }

    /** Of these keys what is wrong, as far as it can be known now. */
    public static List<Finding> wrong(Form answers, List<String> keys) {
        return wrong(answers).stream().filter(f -> keys.contains(f.key())).toList();
    }

    /** Everything that is wrong, as far as it can be known now. */
    public static List<Finding> wrong(Form answers) {
        try {
            Session.of(read(answers)).body();
            return List.of();
        } catch (BadInput e) {
            return e.findings();
        }
    }

    /** Everything that is wrong with a boot alone, what it lacks too. */
    public static List<Finding> boot(Form boot) {
        Form on = boot.with(Map.of("wearer.measurements.stature", "168 cm", "style.leg", "over boot"));
        try {
            Make.read("new", text(on).getBytes(StandardCharsets.UTF_8));
            return List.of();
        } catch (BadInput e) {
            return e.findings();
        }
    }

    /** The make as far as it is known; empty where something is wrong. */
    public static Optional<MakeFile> make(Form answers) {
        try {
            return Optional.of(read(answers));
        } catch (BadInput e) {
            return Optional.empty();
        }
    }

    /** The body as far as it is known; empty before the first measure, or where something is wrong. */
    public static Optional<Body> body(Form answers) {
        try {
            return Optional.of(Session.of(read(answers)).body());
        } catch (BadInput e) {
            return Optional.empty();
        }
    }

    /** What the other answers let expect of a measure. */
    public static Optional<Value> expected(Form answers, Measure measure) {
        return body(answers.with(Map.of("wearer.measurements." + measure.term(), "")))
                .map(b -> b.value(measure));
    }

    /** Why a measure that was taken is doubted; empty where it is not. */
    public static Optional<Doubt> doubt(Body body, Measure measure) {
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
