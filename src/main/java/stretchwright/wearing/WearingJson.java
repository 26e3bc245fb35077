package stretchwright.wearing;

import java.util.Optional;
import stretchwright.fabric.Learnt;
import stretchwright.ground.Numbers;
import stretchwright.ground.Voice;
import stretchwright.intake.LearntKeys;
import stretchwright.intake.MakeFile;
import stretchwright.report.Report;
import stretchwright.report.ReportWearer;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What the after command finds, for other programs; lengths in mm. */
public final class WearingJson {
    private WearingJson() {}

    /** Every symptom, with its question where it asks one. */
    public static String symptoms() {
        ObjectNode root = Report.node();
        ArrayNode list = after(root).putArray("symptoms");
        for (String name : Wearing.symptoms()) {
            ObjectNode one = list.addObject().put("symptom", name);
            Wearing.question(name)
                    .ifPresent(q -> one.put("question", Voice.plain().say(q)));
        }
        return Report.text(root);
    }

    /**
     * What marks on a first pair teach, apart for cloth, wearer and friction.
     *
     * @param written the file that now holds it
     */
    public static String of(FirstWorn worn, Optional<String> written) {
        ObjectNode root = Report.node();
        ObjectNode out = after(root);
        ObjectNode learnt = out.putObject("learnt");
        for (Learnt.Of of : Learnt.Of.values()) {
            ObjectNode inside = learnt.putObject(LearntKeys.word(of));
            worn.learnt().values().forEach((what, value) -> {
                if (what.of() == of) {
                    inside.put(LearntKeys.word(what), Numbers.share(value));
                }
            });
        }
        written.ifPresent(file -> out.put("written", file));
        return Report.text(root);
    }

    /**
     * One symptom and its cure.
     *
     * @param fit empty where the cure is not in the pattern
     * @param written the file that now has the change
     */
    public static String of(Wearing wearing, Optional<WearingFit> fit, Optional<String> written) {
        ObjectNode root = Report.node();
        ObjectNode out = after(root);
        out.put("symptom", wearing.symptom().word()).put("why", Voice.plain().say(wearing.why()));
        wearing.entry().ifPresent(e -> out.put("date", e.date()));
        wearing.entry().filter(e -> !e.answer().isEmpty()).ifPresent(e -> out.put("answer", e.answer()));
        ObjectNode change = out.putObject("change");
        wearing.entry().ifPresent(e -> ReportWearer.change(change, e));
        ObjectNode bounds = out.putObject("bounds");
        wearing.steps().stream()
                .filter(s -> !s.key().isChoice())
                .forEach(s -> bounds.put(s.key().word(), Numbers.mm(s.limit())));
        fit.ifPresent(f -> f.json(out));
        written.ifPresent(file -> out.put("written", file));
        return Report.text(root);
    }

    private static ObjectNode after(ObjectNode root) {
        return root.put("stretchwright", MakeFile.VERSION).putObject("after");
    }
}
