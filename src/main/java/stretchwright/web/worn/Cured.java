package stretchwright.web.worn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Voice;
import stretchwright.intake.WearingSymptom;
import stretchwright.make.Session;
import stretchwright.wearing.Wearing;
import stretchwright.wearing.WearingFit;
import stretchwright.wearing.WearingLines;
import stretchwright.web.draft.Compared;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.MayCut;
import stretchwright.web.frame.Opened;
import stretchwright.workroom.Kept;

/**
 * The change that follows from a symptom.
 *
 * @param lines what is changed, how far it may go, and what that does to the fit
 * @param text of the make with the change; empty where the cure is not in the pattern, or nothing can be changed
 * @param wide drawing of the changed pattern beside the one before, SVG; empty like the text
 * @param make button that makes it
 */
public record Cured(
        MayCut.Mark mark,
        String why,
        List<String> lines,
        Optional<String> text,
        String wide,
        String narrow,
        String make,
        List<String> wrong) {
    /** Of a line that is about something, as the command writes it. */
    private static final String MARGIN = "  ";

    public Cured {
        lines = lines.stream().map(Cured::line).toList();
        wrong = List.copyOf(wrong);
    }

    /** @param answer "yes", "no", or nothing where nothing is asked */
    static Cured of(Bench bench, Opened make, WearingSymptom symptom, String answer) {
        String day = bench.room().today().toString();
        Wearing wearing = Wearing.of(make.session().make(), symptom.word(), answer, day);
        Voice voice = make.voice();
        if (!wearing.findings().isEmpty()) {
            return none(wearing, voice, wearing.findings());
        }
        List<String> lines =
                new ArrayList<>(WearingLines.of(wearing, voice).stream().skip(1).toList());
        if (!wearing.changesThePattern()) {
            return new Cured(
                    MayCut.Mark.LOOK, voice.say(wearing.why()), lines, Optional.empty(), "", "", "", List.of());
        }
        Findings findings = new Findings("worn");
        Optional<String> text = wearing.written(make.text(), findings);
        if (text.isEmpty()) {
            return none(wearing, voice, findings.all());
        }
        return changed(bench, make, wearing, text.get(), lines);
    }

    /** What a line is about stands behind a margin in a column of its own there, and before a colon here. */
    static String line(String told) {
        String plain = told.strip();
        boolean labelled = told.startsWith(MARGIN + plain)
                && plain.length() > WearingLines.COLUMN
                && plain.charAt(WearingLines.COLUMN - 1) == ' ';
        return labelled
                ? plain.substring(0, WearingLines.COLUMN).strip() + ": "
                        + plain.substring(WearingLines.COLUMN).strip()
                : plain;
    }

    private static Cured changed(Bench bench, Opened make, Wearing wearing, String text, List<String> lines) {
        Voice voice = make.voice();
        try {
            lines.addAll(WearingLines.of(WearingFit.of(make.session().make(), wearing.changed()), voice));
            Opened other = bench.tried(make, text);
            Session before = make.session();
            int next = make.demo()
                    ? 2
                    : Kept.of(bench.room().store(), make.stored().thing())
                                    .versions()
                                    .size()
                            + 1;
            return new Cured(
                    MayCut.Mark.HOLDS,
                    voice.say(wearing.why()),
                    lines,
                    Optional.of(text),
                    Compared.drawing(other, before, true),
                    Compared.drawing(other, before, false),
                    voice.say(Tell.said("worn.make", Part.count(next))),
                    List.of());
        } catch (BadInput e) {
            return none(wearing, voice, e.findings());
        }
    }

    private static Cured none(Wearing wearing, Voice voice, List<Finding> findings) {
        List<String> wrong =
                findings.stream().map(f -> f.told(voice)).distinct().toList();
        return new Cured(MayCut.Mark.STOP, voice.say(wearing.why()), List.of(), Optional.empty(), "", "", "", wrong);
    }
}
