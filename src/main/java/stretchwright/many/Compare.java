package stretchwright.many;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stretchwright.advice.CompareVerdict;
import stretchwright.fit.FitReport;
import stretchwright.ground.Document;
import stretchwright.ground.Numbers;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.intake.Echo;
import stretchwright.intake.MakeFile;
import stretchwright.make.Made;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceName;
import stretchwright.print.fit.CompareSvg;
import stretchwright.report.Report;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Two makes beside each other: what went in differently, what became of it in pattern, cloth, time and fit. In: two makes.
 * Out: a table to read, compare.json, and compare.svg with the pieces over each other. Only what differs is listed.
 */
public final class Compare {
    /** Widths of the table's columns; a row has 98 letters at most. */
    private static final int NAME = 46;

    private static final int VALUE = 15;

    private final Made a;
    private final Made b;
    private final Map<String, List<CompareRow>> parts = new LinkedHashMap<>();
    private final List<CompareVerdict> verdicts;
    private final Voice voice;
    private final Voice other;

    private Compare(Made a, Made b) {
        this.a = a;
        this.b = b;
        parts.put("inputs", CompareInputs.of(a, b));
        parts.put("dimensions", CompareNumbers.dimensions(a, b));
        parts.put("seams", CompareNumbers.seams(a, b));
        parts.put("areas", CompareNumbers.areas(a, b));
        parts.put("work", CompareNumbers.work(a, b));
        parts.put("fit", CompareNumbers.fit(a, b));
        this.verdicts = CompareVerdict.of(a.fit(), b.fit());
        this.voice = Voice.of(a.make().unit());
        this.other = Voice.of(b.make().unit());
    }

    public static Compare of(Made a, Made b) {
        return new Compare(a, b);
    }

    /** Whether one of them cannot work as asked. */
    public boolean stops() {
        return a.stops() || b.stops();
    }

    private static Said title(String part) {
        return switch (part) {
            case "inputs" -> Tell.said("compare.inputs");
            case "dimensions" -> Tell.said("compare.dimensions");
            case "seams" -> Tell.said("compare.seams");
            case "areas" -> Tell.said("compare.areas");
            case "work" -> Tell.said("compare.work");
            default -> Tell.said("compare.fit");
        };
    }

    /** For people, within 100 columns. */
    public List<String> table() {
        List<String> lines = new ArrayList<>();
        lines.add("A  " + voice.say(title(a.make())));
        lines.add("B  " + voice.say(title(b.make())));
        parts.forEach((part, all) -> {
            List<CompareRow> rows =
                    all.stream().filter(r -> !r.looksAlike(voice.unit())).toList();
            lines.add("");
            boolean same = rows.isEmpty();
            String title = voice.say(title(part));
            lines.add(same ? row(title, voice.say(Tell.said("compare.same")), "", "") : row(title, "A", "B", "B - A"));
            rows.forEach(r -> lines.addAll(lines(r)));
        });
        List<PieceName> onlyA = only(a.pattern(), b.pattern());
        List<PieceName> onlyB = only(b.pattern(), a.pattern());
        if (!onlyA.isEmpty() || !onlyB.isEmpty()) {
            lines.add("");
            lines.add(voice.say(Tell.said("compare.only", names(onlyA), names(onlyB))));
        }
        lines.add("");
        lines.add(
                voice.say(Tell.said("compare.verdicts", a.fit().count(), b.fit().count())));
        verdicts.stream()
                .filter(Compare::matters)
                .forEach(v -> lines.addAll(wrapped(v.line(v.b().isPresent() ? other : voice))));
        return lines;
    }

    private static Said title(MakeFile make) {
        return Tell.said("compare.title", Part.text(make.name()), Part.text(make.file()));
    }

    private static boolean matters(CompareVerdict v) {
        return v.a().filter(w -> w.severity() != FitReport.Severity.NOTE).isPresent()
                || v.b().filter(w -> w.severity() != FitReport.Severity.NOTE).isPresent();
    }

    private static List<String> wrapped(String line) {
        List<String> out = new ArrayList<>();
        StringBuilder now = new StringBuilder("  ");
        for (String word : line.strip().split(" +")) {
            if (now.length() + word.length() > 96) {
                out.add(now.toString());
                now = new StringBuilder("          ");
            }
            now.append(now.toString().isBlank() ? "" : " ").append(word);
        }
        out.add(now.toString());
        return out;
    }

    private static Part names(List<PieceName> names) {
        return names.isEmpty()
                ? Tell.said("compare.none")
                : Part.listed(
                        Part.Join.COMMA, names.stream().map(PieceName::said).toList());
    }

    private static List<PieceName> only(Pattern one, Pattern other) {
        List<PieceName> names = other.pieces().stream().map(Piece::name).toList();
        return one.pieces().stream()
                .map(Piece::name)
                .filter(n -> !names.contains(n))
                .toList();
    }

    /** A row, each value in its own maker's unit, the change in that of A; words that are too long for a column stand on lines of their own. */
    private List<String> lines(CompareRow r) {
        String what = voice.say(r.what());
        String one = voice.say(r.shownA());
        String two = other.say(r.shownB());
        if (one.length() < VALUE && two.length() < VALUE) {
            return List.of(row("  " + what, one, two, voice.say(r.change())));
        }
        return List.of(
                "  " + Echo.shortened(what, 90),
                "      A  " + Echo.shortened(one, 85),
                "      B  " + Echo.shortened(two, 85));
    }

    private static String row(String what, String a, String b, String change) {
        return String.format(
                        Locale.ROOT,
                        "%-" + NAME + "s %-" + VALUE + "s%-" + VALUE + "s%s",
                        Echo.shortened(what.stripTrailing(), NAME - 3).equals(what) ? what : cut(what),
                        a,
                        b,
                        change)
                .stripTrailing();
    }

    private static String cut(String what) {
        return what.length() > NAME ? what.substring(0, NAME - 3) + "..." : what;
    }

    public String json() {
        ObjectNode root = Report.node();
        root.put("stretchwright", MakeFile.VERSION);
        ObjectNode out = root.putObject("compare");
        side(out.putObject("a"), a);
        side(out.putObject("b"), b);
        parts.forEach((part, rows) -> {
            ArrayNode list = out.putArray(part);
            rows.forEach(r -> row(list.addObject(), r));
        });
        ArrayNode onlyA = out.putArray("onlyInA");
        only(a.pattern(), b.pattern()).forEach(n -> onlyA.add(n.word()));
        ArrayNode onlyB = out.putArray("onlyInB");
        only(b.pattern(), a.pattern()).forEach(n -> onlyB.add(n.word()));
        ArrayNode said = out.putArray("verdicts");
        for (CompareVerdict v : verdicts) {
            ObjectNode one = said.addObject()
                    .put("status", v.status().word())
                    .put("about", voice.say(v.said().about()));
            v.a().ifPresent(w -> one.put("severityA", w.severity().word()).put("messageA", voice.say(w.message())));
            v.b().ifPresent(w -> one.put("severityB", w.severity().word()).put("messageB", other.say(w.message())));
        }
        return Report.text(root);
    }

    private String named(Made made) {
        return Echo.shortened(voice.say(title(made.make())), 90);
    }

    private static void side(ObjectNode out, Made made) {
        out.put("file", made.make().file()).put("name", made.make().name());
        out.put("stops", made.stops());
    }

    private void row(ObjectNode out, CompareRow r) {
        out.put("what", voice.say(r.what())).put("unit", r.unit());
        if (r.unit().equals("words")) {
            out.put("a", voice.say(r.textA())).put("b", other.say(r.textB()));
            return;
        }
        r.a().ifPresent(v -> out.put("a", Numbers.share(v)));
        r.b().ifPresent(v -> out.put("b", Numbers.share(v)));
        if (r.a().isPresent() && r.b().isPresent()) {
            out.put("change", Numbers.share(r.b().getAsDouble() - r.a().getAsDouble()));
        }
    }

    public List<Document> documents() {
        return List.of(
                new Document("compare.json", "comparison", 1, json().getBytes(StandardCharsets.UTF_8)),
                CompareSvg.of(
                        a.pattern(), b.pattern(), named(a), named(b), a.make().unit()));
    }
}
