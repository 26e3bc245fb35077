package stretchwright.web.frame;

import java.util.Comparator;
import java.util.List;
import stretchwright.fit.FitReport;
import stretchwright.fit.FitReport.Severity;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.make.Session;

/**
 * The one sentence on top: what will happen if you cut now.
 *
 * @param mark as drawn beside it
 * @param sentence of few words
 * @param why what the sentence rests on; empty where nothing has to be said
 */
public record MayCut(Mark mark, String sentence, String why) {
    /** The same sign beside the sentence, on the rail and at the place on the drawing. */
    public enum Mark {
        HOLDS,
        LOOK,
        STOP,
        WORKS;

        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    public static MayCut of(Session made, Voice voice) {
        List<FitReport.Verdict> worst = made.fit().verdicts().stream()
                .filter(v -> v.severity() != Severity.NOTE)
                .sorted(Comparator.comparing(FitReport.Verdict::severity))
                .toList();
        if (worst.isEmpty()) {
            return new MayCut(Mark.HOLDS, voice.say(Tell.said("may.cut")), "");
        }
        FitReport.Verdict first = worst.get(0);
        String why = voice.say(first.message());
        if (first.severity() == Severity.STOP) {
            return new MayCut(Mark.STOP, voice.say(not(first)), why);
        }
        if (made.make().fabric().usual().stretch()) {
            return new MayCut(Mark.LOOK, voice.say(Tell.said("may.test")), why);
        }
        return worst.size() == 1
                ? new MayCut(Mark.LOOK, voice.say(Tell.said("may.look-one")), why)
                : new MayCut(Mark.LOOK, voice.say(Tell.said("may.look", Part.count(worst.size()))), why);
    }

    /** What will not pass is told as it will be felt. */
    private static Said not(FitReport.Verdict stop) {
        return switch (stop.kind()) {
            case BAND_OPENING -> Tell.said("may.not-band");
            case HEM_OPENING -> Tell.said("may.not-hem");
            case LEG_OPENING -> Tell.said("may.not-leg");
            default -> Tell.said("may.not", stop.about());
        };
    }
}
