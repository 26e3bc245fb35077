package stretchwright.workroom.jobs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.LayClock;
import stretchwright.lay.nest.StripLay;
import stretchwright.lay.nest.StripResult;

/**
 * A search cut into spells of so many rounds, each of which goes on from the layout that the one before it ended with.
 *
 * <p>What a spell needs is that layout and its own number, no more: so a search that was broken off goes on from the last spell
 * that was kept, and comes to the same layout as one that never was. Up to one spell it is the search of {@link StripLay}
 * itself; beyond, other layouts come out than in one go, in the mean as dense where it was tried (decision 0011).
 */
final class LaySpells {
    /** Rounds, some 6 to 22 s of work; what a spell had found is found again where it is broken off. */
    static final int LONG = 400;

    /** Between the seeds of spells: 2^64 over the golden mean, odd, so that all differ. */
    static final long APART = 0x9E3779B97F4A7C15L;

    private final Asked.Lay asked;
    private final int threads;
    private final LayClock clock;
    private final int spell;

    /** @param spell rounds of one: {@link #LONG}, for another gives other layouts */
    LaySpells(Asked.Lay asked, int threads, LayClock clock, int spell) {
        this.asked = asked;
        this.threads = threads;
        this.clock = clock;
        this.spell = spell;
    }

    /**
     * @param reached rounds that are done, spells that found nothing more to do included
     * @param best over all of them
     */
    record State(long reached, StripResult best) {}

    boolean over(long reached) {
        return reached >= asked.size();
    }

    /** After the next spell; dropped where the clock stopped meanwhile. */
    State next(Optional<State> before) {
        return before.map(this::further).orElseGet(this::first);
    }

    private State first() {
        Effort effort = between(0, spell);
        Findings findings = new Findings(asked.instance().name());
        StripResult result = StripLay.lay(asked.instance(), asked.seed(), effort, threads, clock, step -> {}, findings)
                .orElseThrow(() -> new BadInput(findings.all()));
        return state(0, effort, result);
    }

    private State further(State before) {
        StripResult from = before.best;
        Effort effort = between(before.reached, before.reached + spell);
        long seed = asked.seed() + APART * (before.reached / spell);
        Findings findings = new Findings(asked.instance().name());
        StripResult result = StripLay.goOn(asked.instance(), from, seed, effort, threads, clock, findings)
                .orElseThrow(() -> new BadInput(findings.all()));
        return state(before.reached, effort, joined(before, result));
    }

    /** A search that ended before its rounds did has nothing more to find. */
    private State state(long from, Effort effort, StripResult result) {
        long spent = (long) result.spent().explore() + result.spent().compress();
        long end = from + effort.explore() + effort.compress();
        return new State(spent < end ? asked.size() : end, result);
    }

    /** The rounds from one to another, those of exploring before those of compressing. */
    private Effort between(long from, long to) {
        long end = Math.min(to, asked.size());
        int explore = asked.effort().explore();
        int explored = (int) Math.max(0, Math.min(end, explore) - from);
        return new Effort(explored, (int) (end - from - explored));
    }

    private static StripResult joined(State before, StripResult after) {
        StripResult from = before.best;
        List<StripResult.Step> history = new ArrayList<>(from.history());
        after.history().stream()
                .filter(s -> s.round() > 0)
                .map(s -> new StripResult.Step((int) before.reached + s.round(), s.length()))
                .forEach(history::add);
        Effort spent = new Effort(
                from.spent().explore() + after.spent().explore(),
                from.spent().compress() + after.spent().compress());
        StripResult shorter = after.length() <= from.length() ? after : from;
        return new StripResult(shorter.placements(), shorter.length(), shorter.density(), spent, history);
    }
}
