package stretchwright.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import stretchwright.ground.Unit;
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
        parts.add("On: " + o.machine());
        o.stitch().ifPresent(s -> parts.add("stitch " + s.number() + " (" + s.plainName() + ")"));
        if (!o.seam().isBlank()) {
            parts.add("seam " + o.seam());
        }
        if (o.length() > 0) {
            parts.add(Amounts.length(o.length(), unit));
        }
        parts.add(Amounts.number(o.minutes(), 1) + " min");
        if (!o.after().isEmpty() && why(o).isEmpty()) {
            parts.add("after step " + o.after().stream().map(String::valueOf).collect(Collectors.joining(", ")));
        }
        return String.join(", ", parts);
    }

    static String setting(Operation o) {
        return o.help().setting().map(StepWords::setting).orElse("");
    }

    private static String setting(Setting s) {
        List<String> parts = new ArrayList<>();
        parts.add("stitch length " + number(s.stitchLength()) + " mm");
        parts.add(plain(s.needle()));
        parts.add(plain(s.thread()));
        s.feed().ifPresent(f -> parts.add("differential feed " + number(f)));
        parts.add(plain(s.note()));
        return (s.kept() ? "Set, as it worked before: " : "Set, to begin with: ")
                + parts.stream().filter(p -> !p.isEmpty()).collect(Collectors.joining(", ")) + ".";
    }

    static String allowance(Operation o) {
        return o.help().allowances().isEmpty()
                ? ""
                : "Allowance: "
                        + o.help().allowances().stream()
                                .distinct()
                                .map(StepWords::number)
                                .collect(Collectors.joining(", "))
                        + " mm.";
    }

    static String spread(Operation o) {
        return labelled("Spread", o.help().spread());
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
                : "Why here: "
                        + steps.entrySet().stream()
                                .map(e -> "after step " + String.join(", ", e.getValue()) + ", " + e.getKey())
                                .collect(Collectors.joining("; "))
                        + ".";
    }

    static String demand(Operation o) {
        return o.help().demand().map(StepWords::demand).orElse("");
    }

    private static String demand(Demand d) {
        return "Worst pose, " + plain(d.pose()) + ": the seam is drawn " + Amounts.percent(d.needed())
                + "; the stitch stands " + Amounts.percent(d.stands()) + (d.breaks() ? " - it breaks." : ".");
    }

    static String mistake(Operation o) {
        return labelled("Often goes wrong", o.help().mistake());
    }

    static String undo(Operation o) {
        return labelled("To undo", o.help().undo());
    }

    static String check(Operation o) {
        return labelled("Check", o.check());
    }

    /** Everything that helps, in the order in which it is needed; nothing that is empty. */
    static List<String> help(Operation o) {
        return List.of(setting(o), allowance(o), spread(o), demand(o), mistake(o), undo(o), why(o)).stream()
                .filter(w -> !w.isEmpty())
                .toList();
    }

    private static String labelled(String label, String words) {
        String said = plain(words);
        return said.isEmpty() ? "" : label + ": " + said + (said.matches(".*[.!?)]") ? "" : ".");
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "");
    }
}
