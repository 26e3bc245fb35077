package stretchwright.fit;

import stretchwright.body.Measure;
import stretchwright.fabric.AsWorn;
import stretchwright.fabric.Laplace;
import stretchwright.pattern.Hold;
import stretchwright.pattern.LevelHold;

/**
 * Whether a medium and a firm hold come out as the same garment: where every level is kept below what medium asks for, by limits
 * that know nothing of the hold.
 */
final class SameHold {
    /** The pressure of a medium hold over that of a firm one, and the share of the stretch that medium means (docs/maths/draft.md). */
    private static final double MEDIUM_OF_FIRM = 0.85 / 1.3;

    private static final double MEDIUM_SHARE = 0.25;

    /** A plan that is below what is asked for by less than this gives what is asked for. */
    private static final double HAIR = 1e-6;

    private final Worn worn;
    private final boolean firm;

    private SameHold(Worn worn) {
        this.worn = worn;
        this.firm = worn.style().hold() == Hold.Named.FIRM;
    }

    static boolean of(Worn worn) {
        if (worn.style().hold() != Hold.Named.FIRM && worn.style().hold() != Hold.Named.MEDIUM) {
            return false;
        }
        SameHold same = new SameHold(worn);
        return worn.pattern().holds().stream()
                .filter(h -> h.bound() != LevelHold.Bound.HARD)
                .filter(h -> LevelJudge.measure(h.level()).orElse(Measure.HIP_GIRTH) != Measure.HIP_GIRTH)
                .allMatch(same::kept);
    }

    /** Planned below a medium hold: by a medium make for certain, by a firm one at the most. */
    private boolean kept(LevelHold hold) {
        double strain = hold.reduction() / (1 - hold.reduction());
        double medium = hold.wanted().isPresent()
                ? strainFor(hold.wanted().getAsDouble() * (firm ? MEDIUM_OF_FIRM : 1), hold)
                : share();
        return firm ? strain <= medium * (1 + HAIR) : strain < medium * (1 - HAIR);
    }

    private double strainFor(double kPa, LevelHold hold) {
        double taken = worn.pattern().reductions().along();
        double girth = PressureJudge.ofLeg(worn.body(), hold.leg())
                .mm(LevelJudge.measure(hold.level()).orElseThrow());
        return AsWorn.of(worn.fabric(), 1 / (1 - taken) - 1).extension(Laplace.tension(kPa, girth) / (1 - taken));
    }

    private double share() {
        if (worn.fabric().test().wrapped().isPresent()) {
            double wrapped = worn.fabric().test().wrapped().getAsDouble();
            return wrapped / (1 - wrapped);
        }
        return MEDIUM_SHARE * worn.fabric().test().stretchAcross();
    }
}
