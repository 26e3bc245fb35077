package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;
import static stretchwright.fit.FitReport.Severity.STOP;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Measure;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Chance;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Style;
import stretchwright.settle.SettleRange;
import stretchwright.settle.Settles;

/** Whether waist edge, back and hem stay where they were put: by chances, so that nothing flips on a tenth of a percent. */
final class SettleJudge {
    /** A waist edge so far below its place is felt, mm; a back so far down in a deep bend bares skin (common practice, no source). */
    private static final double WAIST = 15;

    private static final double BACK = 40;

    /** A hem so far up shows laces; of a cuff a third (common practice, no source). */
    private static final double HEM = 10;

    private static final double OF_CUFF = 1.0 / 3;

    /** From these chances on. */
    private static final double LIKELY = 0.3;

    private static final double WORTH_KNOWING = 0.1;

    /** Told to this, mm. */
    private static final double ROUNDED = 5;

    private final Worn worn;
    private final SettleRange range;
    private final Settles middle;

    private SettleJudge(Worn worn, SettleRange range) {
        this.worn = worn;
        this.range = range;
        this.middle = range.middle();
    }

    /** Of two legs the one that has it harder; pulls are told where all of it was asked. */
    static SettleRange range(Worn worn, boolean all) {
        return worn.legs().stream()
                .map(w -> all
                        ? SettleRange.of(w.pattern(), w.body(), w.fabric(), w.boot(), w.style())
                        : SettleRange.quick(w.pattern(), w.body(), w.fabric(), w.boot(), w.style()))
                .reduce(SettleRange::orHarder)
                .orElseThrow();
    }

    static List<Verdict> of(Worn worn, Optional<SettleRange> range) {
        if (range.isEmpty()) {
            return List.of();
        }
        SettleJudge judge = new SettleJudge(worn, range.get());
        if (!range.get().middle().settled()) {
            return List.of(new Verdict(
                    STOP,
                    Subject.of(Subject.Kind.BAND_SLIPS, Tell.said("about.band-slips")),
                    Tell.said("settles.falls"),
                    Tell.said("settles.band-help")));
        }
        List<Verdict> out = new ArrayList<>();
        judge.band().ifPresent(out::add);
        judge.hem().ifPresent(out::add);
        return out;
    }

    private static double chanceAbove(double limit, double middle, double spread) {
        return 1 - Chance.below(limit, middle, spread);
    }

    /** What is told of the band: the worse of standing and deep bend first, the other in the same breath. */
    private Optional<Verdict> band() {
        double back = middle.back() - worn.style().top().backRaise();
        double felt = chanceAbove(WAIST, middle.waist(), range.waistSpread());
        double bares = chanceAbove(BACK, back, range.backSpread());
        double chance = Math.max(felt, bares);
        if (chance < WORTH_KNOWING) {
            return Optional.empty();
        }
        Said slips = Tell.said(
                "settles.back",
                span(back, range.backSpread()),
                Part.length(rounded(Math.max(0, back))),
                odds(bares),
                Part.length(BACK));
        Said sinks =
                Tell.said("settles.waist", span(middle.waist(), range.waistSpread()), odds(felt), Part.length(WAIST));
        Said all = bares >= felt
                ? (felt < WORTH_KNOWING ? slips : slips.and(sinks))
                : (bares < WORTH_KNOWING ? sinks : sinks.and(slips));
        boolean caution = chance >= LIKELY;
        return Optional.of(new Verdict(
                        caution ? CAUTION : NOTE,
                        Subject.of(Subject.Kind.BAND_SLIPS, Tell.said("about.band-slips")),
                        all.and(pulls()).and(after()),
                        caution ? Tell.said("settles.band-help").and(measured()) : Said.NOTHING)
                .by(chance));
    }

    /** Much of the spread is a crotch length that nobody measured. */
    private Said measured() {
        return worn.body().isGiven(Measure.TOTAL_CROTCH_LENGTH)
                ? Said.NOTHING
                : Tell.said("settles.measure", Judge.known(worn.body(), Measure.TOTAL_CROTCH_LENGTH));
    }

    private Said pulls() {
        return middle.pull() > 0
                ? Tell.said(
                        "settles.pulls",
                        Part.fixed(Math.max(0, middle.pullStanding()), 0),
                        Part.fixed(middle.pull(), 0),
                        Part.fixed(middle.grip(), 0))
                : Said.NOTHING;
    }

    private Said after() {
        double after = middle.backAfter() - worn.style().top().backRaise();
        return after > WAIST && middle.pull() > 0
                ? Tell.said("settles.after", Part.length(rounded(after)))
                : Said.NOTHING;
    }

    private Optional<Verdict> hem() {
        Style style = worn.style();
        // one that ends at the ankle or on the boot, and that no strap holds: higher up a bent knee may take it along
        boolean low = style.leg() == Style.Leg.ANKLE
                || (worn.boot().isPresent() && style.lower().outsideBoot());
        double least = style.lower().hem() == LowerEnd.Hem.TO_COLLAR ? LowerEnd.LUNGE : HEM;
        double limit = Math.max(least, OF_CUFF * style.cuffHeight().orElse(0));
        double chance = chanceAbove(limit, middle.hemUp(), range.hemSpread());
        if (!low || style.lower().strapWidth().isPresent() || chance < LIKELY) {
            return Optional.empty();
        }
        return Optional.of(new Verdict(
                        CAUTION,
                        Subject.of(Subject.Kind.HEM_RISES, Tell.said("about.hem")),
                        Tell.said(
                                "settles.hem",
                                span(middle.hemUp(), range.hemSpread()),
                                odds(chance),
                                Part.length(limit)),
                        Tell.said("settles.hem-help"))
                .by(chance));
    }

    private static Part span(double middle, double spread) {
        return Part.span(
                ROUNDED * Math.floor(SettleRange.low(middle, spread) / ROUNDED),
                ROUNDED * Math.ceil(SettleRange.high(middle, spread) / ROUNDED));
    }

    private static double rounded(double mm) {
        return ROUNDED * Math.round(mm / ROUNDED);
    }

    /** "about 3 in 10". */
    private static Part odds(double chance) {
        return Tell.said("settles.odds", Part.count(Math.max(1, Math.min(9, Math.round(10 * chance)))));
    }
}
