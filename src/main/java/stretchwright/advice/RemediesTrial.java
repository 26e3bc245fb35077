package stretchwright.advice;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import stretchwright.body.Body;
import stretchwright.fit.FitReport;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.fit.Subject;
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
    private final Map<Step, Drafted> drafts = new HashMap<>();
    private final Map<Drafted, FitReport> settled = new HashMap<>();
    private final Map<Drafted, FitReport> unsettled = new HashMap<>();
    private int left = MOST;

    private record Step(Said lever, int amount) {}

    /** A make as changed and its pattern; both are left out where it is at odds. */
    private static final class Drafted {
        private final Optional<MakeFile> make;
        private final Optional<Pattern> pattern;

        Drafted(Optional<MakeFile> make, Optional<Pattern> pattern) {
            this.make = make;
            this.pattern = pattern;
        }
    }

    private record Tried(ChangeLever lever, boolean settling) {}

    RemediesTrial(Body body, Pattern pattern, FitReport before, Trials rooms) {
        this.body = body;
        this.pattern = pattern;
        this.before = before;
        this.rooms = rooms;
    }

    /** What the fit check says of the make so changed; empty where it is at odds, or where no trial is left. */
    Optional<FitReport> of(ChangeLever lever, int amount) {
        return of(lever, amount, true);
    }

    /** @param settling whether it is also asked where edges settle, which is most of the work */
    private Optional<FitReport> of(ChangeLever lever, int amount, boolean settling) {
        Step key = new Step(lever.upTo(), amount);
        Drafted draft = drafts.get(key);
        if (draft == null) {
            Optional<MakeFile> changed = lever.make().apply(amount);
            if (changed.isPresent() && lever.redraft() && left-- <= 0) {
                return Optional.empty();
            }
            draft = new Drafted(
                    changed, changed.flatMap(make -> lever.redraft() ? drafted(make) : Optional.of(pattern)));
            drafts.put(key, draft);
        }
        Drafted there = draft;
        return there.pattern.map(p -> (settling ? settled : unsettled)
                .computeIfAbsent(there, d -> judged(p, d.make.orElseThrow(), settling)));
    }

    boolean isTriedAtAll(ChangeLever lever) {
        return drafts.keySet().stream().anyMatch(k -> k.lever().equals(lever.upTo()));
    }

    private Optional<Pattern> drafted(MakeFile make) {
        Findings findings = new Findings("");
        return rooms.draft(body, make, findings).filter(p -> findings.isEmpty());
    }

    private FitReport judged(Pattern tried, MakeFile make, boolean settling) {
        return settling ? rooms.judge(tried, body, make) : rooms.judgeUnsettled(tried, body, make);
    }

    private static boolean settles(Verdict verdict) {
        return verdict.kind() == Subject.Kind.BAND_SLIPS || verdict.kind() == Subject.Kind.HEM_RISES;
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
        Tried tried = new Tried(lever, settles(verdict));
        OptionalInt clear = least(tried, clears, Math.max(1, Math.min(lever.most(), guess)));
        OptionalInt found = clear.isPresent() ? clear : least(tried, turns, lever.most());
        // what was sought without where edges settle must hold with it
        return found.isPresent() && of(lever, found.getAsInt()).filter(turns).isPresent() ? found : OptionalInt.empty();
    }

    private OptionalInt least(Tried tried, Predicate<FitReport> good, int guess) {
        int failed = 0;
        int reached = guess;
        for (int step = 1; !is(tried, reached, good); step *= 4) {
            if (reached == tried.lever.most()) {
                return fewer(tried, good);
            }
            failed = reached;
            reached = Math.min(tried.lever.most(), reached + step);
        }
        for (int step = 1; reached - failed > step && guess < tried.lever.most(); step *= 4) {
            if (!is(tried, reached - step, good)) {
                failed = reached - step;
                break;
            }
            reached -= step;
        }
        return OptionalInt.of(halved(tried, good, failed, reached));
    }

    /** Too much of a change may stop something else: where the most does not help, a third of it is asked. */
    private OptionalInt fewer(Tried tried, Predicate<FitReport> good) {
        int third = tried.lever.most() / 3;
        return third > 0 && is(tried, third, good)
                ? OptionalInt.of(halved(tried, good, 0, third))
                : OptionalInt.empty();
    }

    private int halved(Tried tried, Predicate<FitReport> good, int failed, int reached) {
        int least = reached;
        int less = failed;
        while (least - less > 1) {
            int middle = less + (least - less) / 2;
            if (is(tried, middle, good)) {
                least = middle;
            } else {
                less = middle;
            }
        }
        return least;
    }

    private boolean is(Tried tried, int amount, Predicate<FitReport> good) {
        return of(tried.lever, amount, tried.settling).filter(good).isPresent();
    }
}
