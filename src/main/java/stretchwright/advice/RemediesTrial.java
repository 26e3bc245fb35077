package stretchwright.advice;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import stretchwright.body.Body;
import stretchwright.fit.FitReport;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Findings;
import stretchwright.ground.Said;
import stretchwright.intake.MakeFile;
import stretchwright.pattern.Pattern;

/**
 * Drafts and judges changed makes, each once, and finds the least amount of a change that turns a verdict. Never more
 * than {@link #MOST} drafts, so that a make does not wait for its remedies; counted and not timed, so that the same make
 * gives the same answer everywhere.
 */
final class RemediesTrial {
    /** Drafts and fit checks for one make, a few ms each in a program just started. */
    static final int MOST = 80;

    private final Body body;
    private final Pattern pattern;
    private final FitReport before;
    private final Trials rooms;
    private final Map<Step, Optional<FitReport>> done = new HashMap<>();
    private int left = MOST;

    private record Step(Said lever, int amount) {}

    RemediesTrial(Body body, Pattern pattern, FitReport before, Trials rooms) {
        this.body = body;
        this.pattern = pattern;
        this.before = before;
        this.rooms = rooms;
    }

    /** What the fit check says of the make so changed; empty where it is at odds, or where no trial is left. */
    Optional<FitReport> of(ChangeLever lever, int amount) {
        Step key = new Step(lever.upTo(), amount);
        Optional<FitReport> known = done.get(key);
        if (known != null) {
            return known;
        }
        Optional<MakeFile> changed = lever.make().apply(amount);
        if (changed.isPresent() && lever.redraft() && left-- <= 0) {
            return Optional.empty();
        }
        Optional<FitReport> fit = changed.flatMap(
                make -> lever.redraft() ? drafted(make) : Optional.of(rooms.judge(pattern, body, make)));
        done.put(key, fit);
        return fit;
    }

    boolean isTriedAtAll(ChangeLever lever) {
        return done.keySet().stream().anyMatch(k -> k.lever().equals(lever.upTo()));
    }

    private Optional<FitReport> drafted(MakeFile make) {
        Findings findings = new Findings("");
        return rooms.draft(body, make, findings).filter(p -> findings.isEmpty()).map(p -> rooms.judge(p, body, make));
    }

    /**
     * The least amount after which nothing is said against the place any more; where no amount does that, the least that
     * turns the verdict. Each amount is whole, so what is offered was tried just so.
     *
     * @param guess where to begin; from there in growing steps, then by halving
     */
    OptionalInt least(ChangeLever lever, Verdict verdict, int guess) {
        Predicate<FitReport> turns = after -> RemediesTurn.turns(verdict, before, after);
        Predicate<FitReport> clears =
                turns.and(after -> RemediesTurn.count(after, verdict.place(), FitReport.Severity.CAUTION) == 0);
        OptionalInt clear = least(lever, clears, Math.max(1, Math.min(lever.most(), guess)));
        return clear.isPresent() ? clear : least(lever, turns, lever.most());
    }

    private OptionalInt least(ChangeLever lever, Predicate<FitReport> good, int guess) {
        int failed = 0;
        int reached = guess;
        for (int step = 1; !is(lever, reached, good); step *= 4) {
            if (reached == lever.most()) {
                return fewer(lever, good);
            }
            failed = reached;
            reached = Math.min(lever.most(), reached + step);
        }
        for (int step = 1; reached - failed > step && guess < lever.most(); step *= 4) {
            if (!is(lever, reached - step, good)) {
                failed = reached - step;
                break;
            }
            reached -= step;
        }
        return OptionalInt.of(halved(lever, good, failed, reached));
    }

    /** Too much of a change may stop something else: where the most does not help, a third of it is asked. */
    private OptionalInt fewer(ChangeLever lever, Predicate<FitReport> good) {
        int third = lever.most() / 3;
        return third > 0 && is(lever, third, good)
                ? OptionalInt.of(halved(lever, good, 0, third))
                : OptionalInt.empty();
    }

    private int halved(ChangeLever lever, Predicate<FitReport> good, int failed, int reached) {
        int least = reached;
        int less = failed;
        while (least - less > 1) {
            int middle = less + (least - less) / 2;
            if (is(lever, middle, good)) {
                least = middle;
            } else {
                less = middle;
            }
        }
        return least;
    }

    private boolean is(ChangeLever lever, int amount, Predicate<FitReport> good) {
        return of(lever, amount).filter(good).isPresent();
    }
}
