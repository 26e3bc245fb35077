package stretchwright.make;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stretchwright.body.Body;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.intake.Echo;
import stretchwright.intake.MakeFile;
import stretchwright.intake.Nearest;
import stretchwright.intake.WearingEntry;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Reason;
import stretchwright.report.Report;
import stretchwright.report.ReportPattern;
import stretchwright.report.ReportWearer;
import tools.jackson.databind.node.ObjectNode;

/**
 * Why a dimension of the pattern is what it is: the chain of reasons from the piece back to tape, cloth and style.
 *
 * <p>In: a make file and what is asked, a dimension or a part of its name. Out: lines to read, each step below the one it
 * explains and further in. Promise: every number is the draft's own.
 */
public final class Why {
    private static final Stages ROOMS = new Rooms();

    private final List<Reason> all;
    private final Voice voice;
    private final List<WearingEntry> worn;

    private Why(List<Reason> all, MakeFile make) {
        this.all = all;
        voice = Voice.of(make.unit());
        worn = make.worn();
    }

    /** @throws BadInput where the measures cannot become a pattern */
    public static Why of(MakeFile make) {
        Findings findings = new Findings(make.file(), make.unit());
        Optional<Body> body = ROOMS.body(make.measured(), findings);
        Optional<Pattern> pattern = body.flatMap(b -> ROOMS.draft(b, make, findings));
        if (!findings.isEmpty()) {
            throw new BadInput(findings.all());
        }
        return new Why(pattern.orElseThrow().reasons(), make);
    }

    /** Every dimension with its value. */
    public List<String> dimensions() {
        List<String> lines = new ArrayList<>();
        all.forEach(r ->
                lines.add(voice.say(Tell.said("why.dimension", r.dimension().said(), value(r.value(), r.unit())))));
        lines.addAll(history());
        return lines;
    }

    /** What was changed after wearing, oldest first: the draft starts from a style that holds it already. */
    private List<String> history() {
        List<String> lines = new ArrayList<>();
        for (WearingEntry e : worn) {
            if (lines.isEmpty()) {
                lines.add(voice.say(Tell.said("why.worn")));
            }
            lines.add("  " + voice.say(WornWords.entry(e)));
        }
        return lines;
    }

    /** All reasons, or those of the dimension that is meant and what they rest on; a finding where none is. */
    public String json(String asked, Findings findings) {
        Set<Dimension> told = new LinkedHashSet<>();
        if (asked.isBlank()) {
            all.forEach(r -> told.add(r.dimension()));
        } else {
            chain(asked, findings);
            meant(plain(asked)).forEach(r -> gather(r, told));
        }
        ObjectNode root = Report.node();
        ObjectNode out = root.put("stretchwright", MakeFile.VERSION).putObject("why");
        ReportPattern.reasons(
                out.putArray("reasons"),
                told.stream()
                        .flatMap(name -> all.stream().filter(r -> r.dimension().equals(name)))
                        .distinct()
                        .toList(),
                voice);
        ReportWearer.history(out, worn);
        return Report.text(root);
    }

    private void gather(Reason reason, Set<Dimension> told) {
        if (told.add(reason.dimension())) {
            reason.inputs().forEach(i -> reasonFor(i).ifPresent(next -> gather(next, told)));
        }
    }

    /**
     * The chain behind each dimension that is meant; a finding where none is.
     *
     * @param asked a dimension ("leg: knee width"), or words that it contains in that order ("knee width")
     */
    public List<String> chain(String asked, Findings findings) {
        List<Reason> meant = meant(plain(asked));
        if (meant.isEmpty()) {
            findings.add(
                    "",
                    Tell.said("why.unknown", Part.text(Echo.quoted(asked))),
                    nearest(asked)
                            .map(n -> Tell.said("why.meant", Part.text(n)))
                            .orElse(Said.NOTHING)
                            .and(Tell.said("why.listed")));
            return List.of();
        }
        List<String> lines = new ArrayList<>();
        meant.forEach(r -> tell(r, "", new HashSet<>(), lines));
        lines.addAll(history());
        return lines;
    }

    /** The dimension nearest to mistyped words, which may be the last of its name: "knee widht" is near "leg: knee width". */
    private Optional<String> nearest(String asked) {
        Map<String, String> names = new LinkedHashMap<>();
        for (Reason r : all) {
            String word = r.dimension().word();
            names.put(word, word);
            names.putIfAbsent(word.substring(word.indexOf(':') + 1).strip(), word);
        }
        return Nearest.to(asked, names.keySet()).map(names::get);
    }

    private List<Reason> meant(String asked) {
        List<Reason> exact = all.stream()
                .filter(r -> plain(r.dimension().word()).equals(asked))
                .toList();
        return exact.isEmpty() && !asked.isEmpty()
                ? all.stream()
                        .filter(r -> plain(r.dimension().word()).contains(asked))
                        .toList()
                : exact;
    }

    private static String plain(String words) {
        return words.toLowerCase(Locale.ROOT).replaceAll("[:\\s]+", " ").strip();
    }

    private void tell(Reason reason, String margin, Set<Dimension> told, List<String> lines) {
        lines.add(margin
                + voice.say(Tell.said("why.is", reason.dimension().said(), value(reason.value(), reason.unit()))));
        if (!told.add(reason.dimension())) {
            lines.add(margin + "  " + voice.say(Tell.said("why.above")));
            return;
        }
        lines.add(margin + "  " + voice.say(reason.rule()));
        lines.add(margin + "  " + voice.say(Tell.said("why.source", reason.source())));
        for (Reason.Input input : reason.inputs()) {
            Optional<Reason> next = reasonFor(input);
            if (next.isPresent()) {
                tell(next.get(), margin + "  ", told, lines);
            } else {
                lines.add(margin + "  "
                        + voice.say(Tell.said(
                                "why.input",
                                input.name(),
                                value(input.value(), input.unit()),
                                input.from().said())));
            }
        }
    }

    private Optional<Reason> reasonFor(Reason.Input input) {
        return all.stream().filter(r -> r.dimension().equals(input.from())).findFirst();
    }

    private static Part value(double value, String own) {
        return switch (own) {
            case "mm" -> Part.length(value, 1);
            case "%" -> Part.share(value / 100, 1);
            default -> Part.text(String.format(Locale.ROOT, "%.3g%s", value, own.isEmpty() ? "" : " " + own));
        };
    }
}
