package stretchwright.wearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stretchwright.fit.FitReport;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.intake.WearingKey;

/** What the after command tells, line by line, in the maker's unit. */
public final class WearingLines {
    /** What a line is about stands in a column of its own. */
    private static final int COLUMN = 10;

    private final Voice voice;
    private final List<String> lines = new ArrayList<>();

    private WearingLines(Voice voice) {
        this.voice = voice;
    }

    /** What is the matter and what is changed. */
    public static List<String> of(Wearing wearing, Voice voice) {
        WearingLines out = new WearingLines(voice);
        out.lines.add(
                voice.say(Tell.said("line.why", Part.text(wearing.symptom().word()), wearing.why())));
        wearing.entry().ifPresent(e -> {
            out.line(Tell.said("label.change"), Tell.said("line.change", change(e.change())));
            out.line(Tell.said("label.bounds"), bounds(wearing));
        });
        if (wearing.entry().isEmpty() && wearing.findings().isEmpty()) {
            out.line(Tell.said("label.change"), Tell.said("line.none"));
        }
        return out.lines;
    }

    /** What the change does to pattern and fit. */
    public static List<String> of(WearingFit fit, Voice voice) {
        WearingLines out = new WearingLines(voice);
        List<Said> moved = fit.moves().stream()
                .map(m -> Tell.said("moved.by", m.what(), Part.signed(m.by())))
                .toList();
        out.line(
                Tell.said("label.pattern"),
                moved.isEmpty() ? Tell.said("line.widths-stay") : Part.listed(Part.Join.COMMA, moved));
        out.line(
                Tell.said("label.fit"),
                Tell.said("line.fit", fit.after().count(), fit.before().count()));
        fit.verdicts().stream()
                .filter(v -> v.said().severity() != FitReport.Severity.NOTE)
                .forEach(v -> out.lines.add("  " + v.line(voice)));
        return out.lines;
    }

    /** "back waist: -10 mm", in the maker's unit. */
    static Part change(Map<WearingKey, Double> change) {
        List<Said> all = change.entrySet().stream()
                .map(e -> Tell.said(
                        "change.one",
                        Part.text(e.getKey().word()),
                        e.getKey().isChoice() ? Part.text(e.getKey().choice()) : Part.signed(e.getValue())))
                .toList();
        return Part.listed(Part.Join.COMMA, all);
    }

    private static Part bounds(Wearing wearing) {
        List<Said> all = new ArrayList<>();
        for (Cure.Step s : wearing.steps()) {
            Part word = Part.text(s.key().word());
            all.add(
                    s.key().isChoice()
                            ? Tell.said("bounds.once", word)
                            : Tell.said("bounds.up-to", word, Part.signed(s.limit())));
        }
        return Part.listed(Part.Join.COMMA, all);
    }

    private void line(Said label, Part told) {
        String about = voice.say(label);
        lines.add("  " + about + " ".repeat(Math.max(1, COLUMN - about.length())) + voice.say(told));
    }
}
