package stretchwright.web.ask;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.ground.Finding;
import stretchwright.ground.Part;
import stretchwright.ground.Quantities;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.web.form.Form;

/** What was typed as an answer, as values of a make. */
final class Sent {
    /** The second reading of a measure. */
    static final String AGAIN = " again";

    /** How far a stretch of cloth is pulled that was so long before, mm and inches. */
    static final double MARKED_MM = 100;

    static final double MARKED_IN = 4;

    private Sent() {}

    static Map<String, String> of(Question question, Form sent) {
        Map<String, String> out = new LinkedHashMap<>();
        Unit unit = Unit.of(sent.value("unit")).orElse(Unit.CM);
        if (!sent.value("unit").isBlank()) {
            out.put("unit", sent.value("unit"));
        }
        for (String key : question.keys()) {
            out.put(key, question == Question.CLOTH ? stretch(sent.value(key), unit) : readings(sent, key));
        }
        if (question == Question.CLOTH) {
            out.put("fabric.usual", "true");
            if (sent.value("do").equals("none")) {
                question.keys().forEach(k -> out.put(k, ""));
            }
        }
        return out;
    }

    /** One reading, or both. */
    private static String readings(Form sent, String key) {
        String again = sent.value(key + AGAIN).strip();
        return again.isEmpty() ? sent.value(key) : sent.value(key) + "; " + again;
    }

    /** A share as it is; a length as the share by which the marked one was pulled. */
    private static String stretch(String typed, Unit unit) {
        double marked = unit == Unit.IN ? Unit.IN.toMm(MARKED_IN) : MARKED_MM;
        OptionalDouble pulled = typed.contains("%")
                ? OptionalDouble.empty()
                : Quantities.length(typed, unit == Unit.IN ? Unit.IN : Unit.MM);
        return pulled.isPresent() && pulled.getAsDouble() > marked
                ? Math.round(1000 * (pulled.getAsDouble() / marked - 1)) / 10.0 + " %"
                : typed;
    }

    /** What has to be answered before the next question can be asked. */
    static Optional<Finding> lacking(Question question, Form now, boolean noCloth) {
        boolean cloth = question == Question.CLOTH && !noCloth;
        return question.keys().stream()
                .filter(k -> now.value(k).isBlank() && (cloth || isNeeded(question, k, now)))
                .findFirst()
                .map(k -> new Finding("new", k, 0, lack(question), Said.NOTHING, Unit.CM));
    }

    /** A cloth that is pulled becomes longer than what was held; a share by which it does is told by its sign. */
    static Optional<Finding> notPulled(Question question, Form now) {
        return question.keys().stream()
                .filter(k -> question == Question.CLOTH && isLength(now.value(k)))
                .findFirst()
                .map(k -> new Finding(
                        "new",
                        k,
                        0,
                        Tell.said("ask.not-pulled", Part.text(now.value(k))),
                        Tell.said("ask.not-pulled-help"),
                        Unit.CM));
    }

    private static boolean isLength(String typed) {
        return !typed.contains("%") && Quantities.length(typed, Unit.MM).isPresent();
    }

    /** Who skips every measure leaves nothing to draft from. */
    static List<Finding> noneAtAll(Question question, Form now) {
        boolean none = now.typed().keySet().stream().noneMatch(k -> k.startsWith("wearer.measurements."));
        return question == Question.CALF && none
                ? List.of(
                        new Finding("new", question.keys().get(0), 0, Tell.said("ask.lack-all"), Said.NOTHING, Unit.CM))
                : List.of();
    }

    private static boolean isNeeded(Question question, String key, Form now) {
        return switch (question) {
            case WHO ->
                List.of("wearer.figure", "style.leg").contains(key)
                        || key.equals("wearer.age")
                                && now.value("wearer.figure").equals("child");
            case CLOTH -> false;
            case STATURE, WAIST, SEAT, INNER_LEG, THROUGH_THE_LEGS, CALF -> true;
            case BOOT_TOP, BOOT_HEEL, BOOT_HEM, ANKLE_TO_HEM -> true;
        };
    }

    private static Said lack(Question question) {
        return switch (question) {
            case WHO -> Tell.said("ask.lack-who");
            case CLOTH -> Tell.said("ask.lack-cloth");
            case BOOT_TOP, BOOT_HEEL, BOOT_HEM, ANKLE_TO_HEM -> Tell.said("ask.lack-boot");
            case STATURE, WAIST, SEAT, INNER_LEG, THROUGH_THE_LEGS, CALF -> Tell.said("ask.lack-measure");
        };
    }
}
