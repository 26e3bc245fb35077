package stretchwright.make;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import stretchwright.body.Body;
import stretchwright.fit.FitReport;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Findings;

/**
 * Drafts and judges changed makes, each once, and finds the least amount of a change that turns a verdict. Never more
 * than {@link #MOST} drafts, so that a make does not wait for its remedies; counted and not timed, so that the same make
 * gives the same answer everywhere.
 */
final class RemediesTrial {
    /** Drafts and fit checks for one make, 1 to 2 ms each. */
    static final int MOST = 72;

    private final Body body;
    private final FitReport before;
    private final Stages stages;
    private final Map<String, Optional<FitReport>> done = new HashMap<>();
    private int left = MOST;

    RemediesTrial(Body body, FitReport before, Stages stages) {
        this.body = body;
        this.before = before;
        this.stages = stages;
    }

    /** What the fit check says of the make so changed; empty where it is at odds, or where no trial is left. */
    Optional<FitReport> of(ChangeLever lever, int amount) {
        String key = lever.name() + " " + amount;
        Optional<FitReport> known = done.get(key);
        if (known != null) {
            return known;
        }
        if (left == 0) {
            return Optional.empty();
        }
        left--;
        Optional<FitReport> fit = lever.make().apply(amount).flatMap(this::judged);
        done.put(key, fit);
        return fit;
    }

    boolean isTriedAtAll(ChangeLever lever) {
        return done.keySet().stream().anyMatch(k -> k.startsWith(lever.name() + " "));
    }

    private Optional<FitReport> judged(MakeFile make) {
        Findings findings = new Findings("");
        return stages.draft(body, make, findings)
                .filter(p -> findings.isEmpty())
                .map(p -> stages.fit(p, body, make));
    }

    /**
     * The least amount after which nothing is said against the place any more; where no amount does that, the least that
     * turns the verdict. By halving; each amount is whole, so what is offered was tried just so. Where the most does not
     * help, a third of it is asked too: too much of a change may stop something else.
     */
    OptionalInt least(ChangeLever lever, Verdict verdict) {
        Predicate<FitReport> turns = after -> RemediesKey.turns(verdict, before, after);
        Predicate<FitReport> clears = turns.and(
                after -> RemediesKey.count(after, RemediesKey.place(verdict), FitReport.Severity.CAUTION) == 0);
        OptionalInt clear = least(lever, clears);
        return clear.isPresent() ? clear : least(lever, turns);
    }

    private OptionalInt least(ChangeLever lever, Predicate<FitReport> good) {
        int most = lever.most();
        int reached = is(lever, most, good) ? most : most > 3 && is(lever, most / 3, good) ? most / 3 : 0;
        if (reached == 0) {
            return OptionalInt.empty();
        }
        int failed = 0;
        while (reached - failed > 1) {
            int middle = failed + (reached - failed) / 2;
            if (is(lever, middle, good)) {
                reached = middle;
            } else {
                failed = middle;
            }
        }
        return OptionalInt.of(reached);
    }

    private boolean is(ChangeLever lever, int amount, Predicate<FitReport> good) {
        return of(lever, amount).filter(good).isPresent();
    }
}
