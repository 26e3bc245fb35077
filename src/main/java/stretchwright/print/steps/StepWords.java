package stretchwright.print.steps;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stretchwright.ground.Decimals;
import stretchwright.ground.Unit;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Phrases;
import stretchwright.sewing.Setting;
import stretchwright.sewing.SewingPlan.Demand;
import stretchwright.sewing.SewingPlan.Operation;

/** What is said of one step besides its instruction; sentences are empty where there is nothing to say. */
final class StepWords {
    private static final int LONGEST = 2000;

    private StepWords() {}

    /** As it may stand on paper: no control characters, no endless words. */
    static String plain(String words) {
        return words.isBlank() ? "" : Letters.shortened(words, LONGEST);
    }

    static String title(Operation o) {
        return o.step() + ". " + plain(o.name());
    }

    /** Machine, stitch, seam, how long, and when if no reason tells it. */
    static String work(Operation o, Unit unit) {
        List<String> parts = new ArrayList<>();
        parts.add(Phrases.of("step.on", o.machine()));
        o.stitch().ifPresent(s -> parts.add(Phrases.of("step.stitch", String.valueOf(s.number()), s.plainName())));
        if (!o.seam().isBlank()) {
            parts.add(Phrases.of("step.seam", o.seam()));
        }
        if (o.length() > 0) {
            parts.add(Amounts.length(o.length(), unit));
        }
        parts.add(Phrases.of("step.minutes", Amounts.number(o.minutes(), 1)));
        if (!o.after().isEmpty() && why(o).isEmpty()) {
            parts.add(Phrases.of(
                    "step.after", o.after().stream().map(String::valueOf).collect(Collectors.joining(", "))));
        }
        return String.join(", ", parts);
    }

    static String setting(Operation o) {
        return o.help().setting().map(StepWords::setting).orElse("");
    }

    private static String setting(Setting s) {
        List<String> parts = new ArrayList<>();
        parts.add(Phrases.of("step.stitch-length", number(s.stitchLength())));
        parts.add(plain(s.needle()));
        parts.add(plain(s.thread()));
        s.feed().ifPresent(f -> parts.add(Phrases.of("step.feed", number(f))));
        parts.add(plain(s.note()));
        String said = parts.stream().filter(p -> !p.isEmpty()).collect(Collectors.joining(", "));
        return s.kept() ? Phrases.of("step.set-kept", said) : Phrases.of("step.set", said);
    }

    static String allowance(Operation o, Unit unit) {
        return o.help().allowances().isEmpty()
                ? ""
                : Phrases.of(
                        "step.allowance",
                        o.help().allowances().stream()
                                .distinct()
                                .map(mm -> Amounts.sewn(mm, unit))
                                .collect(Collectors.joining(", ")));
    }

    static String spread(Operation o) {
        String said = sentence(o.help().spread());
        return said.isEmpty() ? "" : Phrases.of("step.spread", said);
    }

    /** Steps that come before for the same reason are named together. */
    static String why(Operation o) {
        Map<String, List<String>> steps = new LinkedHashMap<>();
        o.help().why().stream()
                .filter(r -> !r.because().isBlank())
                .forEach(r -> steps.computeIfAbsent(plain(r.because()), because -> new ArrayList<>())
                        .add(String.valueOf(r.step())));
        return steps.isEmpty()
                ? ""
                : Phrases.of(
                        "step.why",
                        steps.entrySet().stream()
                                .map(e -> Phrases.of("step.after-because", String.join(", ", e.getValue()), e.getKey()))
                                .collect(Collectors.joining("; ")));
    }

    static String demand(Operation o) {
        return o.help().demand().map(StepWords::demand).orElse("");
    }

    private static String demand(Demand d) {
        String[] values = {plain(d.pose()), Amounts.percent(d.needed()), Amounts.percent(d.stands())};
        return d.breaks() ? Phrases.of("step.demand-breaks", values) : Phrases.of("step.demand", values);
    }

    static String mistake(Operation o) {
        String said = sentence(o.help().mistake());
        return said.isEmpty() ? "" : Phrases.of("step.mistake", said);
    }

    static String undo(Operation o) {
        String said = sentence(o.help().undo());
        return said.isEmpty() ? "" : Phrases.of("step.undo", said);
    }

    static String check(Operation o) {
        String said = sentence(o.check());
        return said.isEmpty() ? "" : Phrases.of("step.check", said);
    }

    /** Everything that helps, in the order in which it is needed; nothing that is empty. */
    static List<String> help(Operation o, Unit unit) {
        return List.of(setting(o), allowance(o, unit), spread(o), demand(o), mistake(o), undo(o), why(o)).stream()
                .filter(w -> !w.isEmpty())
                .toList();
    }

    /** With a full stop at its end, unless it is empty. */
    private static String sentence(String words) {
        String said = plain(words);
        return said.isEmpty() || said.matches(".*[.!?)]") ? said : said + ".";
    }

    private static String number(double value) {
        return Decimals.upTo(value, 2);
    }
}
