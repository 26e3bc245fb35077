package stretchwright.print.steps;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Phrases;
import stretchwright.sewing.Setting;
import stretchwright.sewing.SewingPlan.Demand;
import stretchwright.sewing.SewingPlan.Operation;

/**
 * What is said of one step, in the maker's unit; sentences are empty where there is nothing to say.
 *
 * @param voice of the maker
 */
record StepWords(Voice voice) {
    private static final int LONGEST = 2000;

    static StepWords of(Job job) {
        return new StepWords(job.voice());
    }

    /** As it may stand on paper: no control characters, no endless words. */
    static String plain(String words) {
        return words.isBlank() ? "" : Letters.shortened(words, LONGEST);
    }

    String plain(Part part) {
        return plain(voice.say(part));
    }

    String title(Operation o) {
        return o.step() + ". " + plain(o.name().said());
    }

    /** Machine, stitch, seam, how long, and when if no reason tells it. */
    String work(Operation o) {
        List<String> parts = new ArrayList<>();
        parts.add(Phrases.of("step.on", voice.say(o.place().said())));
        o.stitch()
                .ifPresent(s -> parts.add(Phrases.of("step.stitch", String.valueOf(s.number()), voice.say(s.said()))));
        if (!o.seam().isBlank()) {
            parts.add(Phrases.of("step.seam", o.seam()));
        }
        if (o.length() > 0) {
            parts.add(length(o.length()));
        }
        parts.add(Phrases.of("step.minutes", Amounts.number(o.minutes(), 1)));
        if (!o.after().isEmpty() && why(o).isEmpty()) {
            parts.add(Phrases.of(
                    "step.after", o.after().stream().map(String::valueOf).collect(Collectors.joining(", "))));
        }
        return String.join(", ", parts);
    }

    /** Without idle zeros; inches as a tape has them. */
    private String length(double mm) {
        return voice.unit() == Unit.IN ? voice.say(Part.length(mm)) : Amounts.length(mm, voice.unit());
    }

    /** The edges that meet. */
    String joins(Operation o) {
        return o.joins().isEmpty()
                ? ""
                : Phrases.of(
                        "step.joins",
                        o.joins().stream().map(j -> plain(j.said())).collect(Collectors.joining(" + ")));
    }

    String setting(Operation o) {
        return o.help().setting().map(this::setting).orElse("");
    }

    private String setting(Setting s) {
        List<String> parts = new ArrayList<>();
        parts.add(Phrases.of("step.stitch-length", Voice.number(s.stitchLength(), 2)));
        parts.add(plain(s.needle()));
        parts.add(plain(s.thread()));
        s.feed().ifPresent(f -> parts.add(Phrases.of("step.feed", Voice.number(f, 2))));
        parts.add(plain(s.note()));
        String said = parts.stream().filter(p -> !p.isEmpty()).collect(Collectors.joining(", "));
        return s.kept() ? Phrases.of("step.set-kept", said) : Phrases.of("step.set", said);
    }

    String allowance(Operation o) {
        return o.help().allowances().isEmpty()
                ? ""
                : Phrases.of(
                        "step.allowance",
                        o.help().allowances().stream()
                                .distinct()
                                .map(mm -> voice.say(Part.sewn(mm)))
                                .collect(Collectors.joining(", ")));
    }

    String spread(Operation o) {
        String said = sentence(Part.listed(Part.Join.SEMICOLON, o.help().spread()));
        return said.isEmpty() ? "" : Phrases.of("step.spread", said);
    }

    /** Steps that come before for the same reason are named together. */
    String why(Operation o) {
        Map<Said, List<String>> steps = new LinkedHashMap<>();
        o.help().why().stream()
                .filter(r -> !r.because().isNothing())
                .forEach(r -> steps.computeIfAbsent(r.because(), because -> new ArrayList<>())
                        .add(String.valueOf(r.step())));
        return steps.isEmpty()
                ? ""
                : Phrases.of(
                        "step.why",
                        steps.entrySet().stream()
                                .map(e -> Phrases.of(
                                        "step.after-because", String.join(", ", e.getValue()), plain(e.getKey())))
                                .collect(Collectors.joining("; ")));
    }

    String demand(Operation o) {
        return o.help().demand().map(this::demand).orElse("");
    }

    private String demand(Demand d) {
        String[] values = {plain(d.pose()), Amounts.percent(d.needed()), Amounts.percent(d.stands())};
        return d.breaks() ? Phrases.of("step.demand-breaks", values) : Phrases.of("step.demand", values);
    }

    String mistake(Operation o) {
        String said = sentence(o.help().mistake());
        return said.isEmpty() ? "" : Phrases.of("step.mistake", said);
    }

    String undo(Operation o) {
        String said = sentence(o.help().undo());
        return said.isEmpty() ? "" : Phrases.of("step.undo", said);
    }

    String instruction(Operation o) {
        return plain(o.instruction());
    }

    String check(Operation o) {
        String said = sentence(o.check());
        return said.isEmpty() ? "" : Phrases.of("step.check", said);
    }

    /** Everything that helps, in the order in which it is needed; nothing that is empty. */
    List<String> help(Operation o) {
        return Stream.of(setting(o), allowance(o), spread(o), demand(o), mistake(o), undo(o), why(o))
                .filter(w -> !w.isEmpty())
                .toList();
    }

    /** With a full stop at its end, unless it is empty: the sewer's own words may have none. */
    private String sentence(Part part) {
        String said = plain(part);
        return said.isEmpty() || said.matches(".*[.!?)]") ? said : said + ".";
    }
}
