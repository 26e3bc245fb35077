package stretchwright.wearing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.intake.MakeFile;
import stretchwright.intake.WearingApplied;
import stretchwright.intake.WearingEntry;
import stretchwright.intake.WearingKey;
import stretchwright.intake.WearingReader;
import stretchwright.wearing.Cure.Step;

/** How far changes after wearing go: one step at a time, and never beyond what makers change in all. */
final class Bounds {
    /** Less is no change, mm. */
    private static final double LEAST = 1;

    private static final Said AGAIN = Tell.said("measure-again");

    private Bounds() {}

    /** The next step of each change, or what is left of it; a finding where nothing is left. */
    static Map<WearingKey, Double> next(MakeFile make, List<Step> steps, Findings findings) {
        Map<WearingKey, Double> sums = WearingApplied.sums(make.worn());
        Map<WearingKey, Double> next = new LinkedHashMap<>();
        for (Step step : steps) {
            double so = sums.getOrDefault(step.key(), 0.0);
            double left = step.limit() > 0 ? step.limit() - so : so - step.limit();
            double mm = Math.min(Math.abs(step.by()), left);
            if (mm >= LEAST) {
                next.put(step.key(), Math.copySign(mm, step.by()));
            }
        }
        if (next.isEmpty()) {
            Step first = steps.get(0);
            Part word = Part.text(first.key().word());
            findings.add(
                    WearingReader.SECTION,
                    first.key().isChoice()
                            ? Tell.said(
                                    "history.has-choice",
                                    word,
                                    Part.text(first.key().choice()))
                            : Tell.said(
                                    "history.as-far",
                                    word,
                                    first.limit() < 0
                                            ? Part.signed(first.limit()).atLeast()
                                            : Part.signed(first.limit()).atMost()),
                    AGAIN);
        }
        return next;
    }

    /** Findings where all changes together go too far. */
    static void all(List<WearingEntry> history, Findings findings) {
        WearingApplied.sums(history).forEach((key, sum) -> {
            if (!key.isChoice() && !key.range().holds(sum)) {
                findings.add(key.word(), Tell.said("history.beyond", Part.signed(sum)), AGAIN);
            }
        });
    }
}
