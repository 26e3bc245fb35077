package stretchwright.wearing;

import java.util.ArrayList;
import java.util.List;
import stretchwright.fabric.Learnt;
import stretchwright.fit.FitReport;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.intake.LearntKeys;
import stretchwright.make.Lines;
import stretchwright.make.WornWords;

/** What the after command tells, line by line, in the maker's unit. */
public final class WearingLines {
    /** What a line is about stands in a column of its own. */
    public static final int COLUMN = 10;

    private WearingLines() {}

    /** What is the matter and what is changed. */
    public static List<String> of(Wearing wearing, Voice voice) {
        Lines out = new Lines(voice, COLUMN);
        out.say(Tell.said("line.why", Part.text(wearing.symptom().word()), wearing.why()));
        wearing.entry().ifPresent(e -> {
            out.about(Tell.said("label.change"), Tell.said("line.change", WornWords.change(e.change())));
            out.about(Tell.said("label.bounds"), bounds(wearing));
        });
        if (wearing.entry().isEmpty() && wearing.findings().isEmpty()) {
            out.about(Tell.said("label.change"), Tell.said("line.none"));
        }
        return out.all();
    }

    /** What was read of the first pair, and what it teaches, apart for cloth, wearer and friction. */
    public static List<String> of(FirstWorn worn, Voice voice) {
        Lines out = new Lines(voice, COLUMN);
        worn.marks().forEach(out::say);
        for (Learnt.Of of : Learnt.Of.values()) {
            List<Part> told = new ArrayList<>();
            worn.learnt().values().forEach((what, value) -> {
                if (what.of() == of) {
                    told.add(LearntKeys.told(what, value));
                }
            });
            out.about(label(of), Part.listed(Part.Join.COMMA, told));
        }
        return out.all();
    }

    private static Said label(Learnt.Of of) {
        return switch (of) {
            case CLOTH -> Tell.said("label.cloth");
            case WEARER -> Tell.said("label.wearer");
            case FRICTION -> Tell.said("label.friction");
        };
    }

    /** What the change does to pattern and fit. */
    public static List<String> of(WearingFit fit, Voice voice) {
        Lines out = new Lines(voice, COLUMN);
        List<Said> moved = fit.moves().stream()
                .map(m -> Tell.said("moved.by", m.what(), Part.signed(m.by())))
                .toList();
        out.about(
                Tell.said("label.pattern"),
                moved.isEmpty() ? Tell.said("line.widths-stay") : Part.listed(Part.Join.COMMA, moved));
        out.about(
                Tell.said("label.fit"),
                Tell.said("line.fit", fit.after().count(), fit.before().count()));
        fit.verdicts().stream()
                .filter(v -> v.said().severity() != FitReport.Severity.NOTE)
                .forEach(v -> out.say(Part.text("  " + v.line(voice))));
        return out.all();
    }

    /** No farther from zero than the limit. */
    private static Part toward(double limit) {
        return limit < 0 ? Part.signed(limit).atLeast() : Part.signed(limit).atMost();
    }

    private static Part bounds(Wearing wearing) {
        List<Said> all = new ArrayList<>();
        for (Cure.Step s : wearing.steps()) {
            Part word = Part.text(s.key().word());
            all.add(
                    s.key().isChoice()
                            ? Tell.said("bounds.once", word)
                            : Tell.said("bounds.up-to", word, toward(s.limit())));
        }
        return Part.listed(Part.Join.COMMA, all);
    }
}
