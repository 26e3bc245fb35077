package stretchwright.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import stretchwright.body.Body;
import stretchwright.fit.FitReport;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Tried;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.fit.Subject;
import stretchwright.ground.Said;
import stretchwright.intake.MakeFile;
import stretchwright.pattern.Pattern;

/**
 * Tries changes on each stop and caution that a change of style, hold, cloth or stitch can turn, and says what became of
 * them. In: a make, its body, pattern and fit. Out: the same numbers, with verdicts that name only remedies which were
 * drafted and judged. How and with what limits: docs/maths/remedies.md.
 */
public final class Remedies {
    /** Offered for one verdict. */
    static final int MOST_OFFERED = 3;

    /** Of the first and the last that are offered together, in the weights of the changes (common practice, no source). */
    private static final double EFFORT_APART = 4;

    private final MakeFile make;
    private final Pattern pattern;
    private final FitReport before;
    private final RemediesTrial trial;

    private Remedies(MakeFile make, Body body, Pattern pattern, FitReport before, Trials rooms) {
        this.make = make;
        this.pattern = pattern;
        this.before = before;
        this.trial = new RemediesTrial(body, pattern, before, rooms);
    }

    /** A change with its amount, and what the fit check says with it. */
    record Offer(ChangeLever lever, int amount, Tried tried) {
        double effort() {
            return lever.effort().applyAsDouble(amount);
        }
    }

    public static FitReport tried(MakeFile make, Body body, Pattern pattern, FitReport before, Trials rooms) {
        return advised(make, body, pattern, before, rooms).report();
    }

    /** The same, and the changes themselves. */
    public static Advised advised(MakeFile make, Body body, Pattern pattern, FitReport before, Trials rooms) {
        Map<Verdict, List<Offer>> offers = offers(make, body, pattern, before, rooms);
        if (offers.isEmpty()) {
            return new Advised(before, List.of());
        }
        List<Remedy> turning = new ArrayList<>();
        offers.forEach((verdict, of) -> of.stream()
                .filter(o -> o.tried().turns())
                .forEach(o -> o.lever()
                        .make()
                        .apply(o.amount())
                        .ifPresent(changed -> turning.add(new Remedy(verdict, o.tried(), changed)))));
        FitReport report = before.with(before.verdicts().stream()
                .map(v -> offers.containsKey(v) ? worded(v, offers.get(v)) : v)
                .toList());
        return new Advised(report, turning);
    }

    /** For each verdict that something was tried on: what turns it, the best first; or what does not. */
    static Map<Verdict, List<Offer>> offers(MakeFile make, Body body, Pattern pattern, FitReport before, Trials rooms) {
        Remedies remedies = new Remedies(make, body, pattern, before, rooms);
        Map<Verdict, List<Offer>> out = new LinkedHashMap<>();
        for (Verdict v : before.verdicts()) {
            if (v.severity() != Severity.NOTE && v.kind() != Subject.Kind.NONE) {
                List<Offer> offers = remedies.offers(v);
                if (!offers.isEmpty()) {
                    out.put(v, offers);
                }
            }
        }
        return out;
    }

    private List<Offer> offers(Verdict v) {
        List<Offer> turning = new ArrayList<>();
        List<Offer> vain = new ArrayList<>();
        for (ChangeLever lever : RemediesLevers.of(v, make, pattern)) {
            if (turning.size() == MOST_OFFERED) {
                break;
            }
            OptionalInt least = trial.least(lever, v, RemediesGuess.of(lever, v, before, make));
            if (least.isPresent()) {
                turning.add(turned(v, lever, least.getAsInt()));
            } else if (trial.isTriedAtAll(lever)) {
                vain.add(new Offer(lever, lever.most(), new Tried(lever.upTo(), false, vainly(v, lever))));
            }
        }
        turning.sort(Comparator.comparingDouble(Offer::effort));
        return turning.isEmpty() ? vain : worthwhile(turning);
    }

    /** A cloth of four times the stretch is no remedy where a few millimetres are one. */
    private static List<Offer> worthwhile(List<Offer> turning) {
        double best = turning.get(0).effort();
        return turning.stream().filter(o -> o.effort() <= best + EFFORT_APART).toList();
    }

    private Offer turned(Verdict v, ChangeLever lever, int amount) {
        FitReport after = trial.of(lever, amount).orElseThrow();
        return new Offer(
                lever, amount, new Tried(lever.words().apply(amount), true, RemediesWords.after(v, before, after)));
    }

    private Said vainly(Verdict v, ChangeLever lever) {
        return trial.of(lever, lever.most())
                .map(after -> RemediesWords.vain(v, before, after))
                .orElse(RemediesWords.undrafted());
    }

    private static Verdict worded(Verdict v, List<Offer> offers) {
        List<Tried> tried = offers.stream().map(Offer::tried).toList();
        return v.with(RemediesWords.remedy(v.kind(), tried), tried);
    }
}
