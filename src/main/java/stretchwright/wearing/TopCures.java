package stretchwright.wearing;

import static stretchwright.wearing.Cure.choice;
import static stretchwright.wearing.Cure.step;

import stretchwright.ground.Part;
import stretchwright.intake.WearingKey;

/** What waist and band do when worn. Steps and limits are makers' common practice, no source. */
final class TopCures {
    private TopCures() {}

    static Cure slidesDown() {
        return Cure.of(Tell.said("band.slides-down", Part.span(25, 32)), step(WearingKey.CROTCH, 10, 20));
    }

    static Cure rollsOver() {
        return Cure.of(Tell.said("band.rolls-over", Part.length(3)), choice(WearingKey.BAND));
    }

    static Cure gape() {
        return Cure.of(Tell.said("waist.gape"), choice(WearingKey.BACK));
    }

    static Cure tightOverSeat() {
        return Cure.of(Tell.said("band.folds-tight"), step(WearingKey.HIP, 10, 20));
    }

    static Cure backTooLong() {
        return Cure.of(Tell.said("band.folds-long"), step(WearingKey.BACK_WAIST, -6, -25));
    }

    static Cure dropsSitting() {
        return Cure.of(Tell.said("band.drops-sitting"), step(WearingKey.BACK_WAIST, 15, 30));
    }

    static Cure tooHigh() {
        return Cure.of(Tell.said("waist.too-high"), step(WearingKey.RISE, 10, 40));
    }

    /** A top edge below the waist comes up all round; one at the waist can only rise at centre front and back. */
    static Cure tooLow() {
        return Cure.of(Tell.said("waist.too-low"), step(WearingKey.RISE, -10, -30))
                .or(step(WearingKey.FRONT_WAIST, 10, 20), step(WearingKey.BACK_WAIST, 10, 30));
    }

    static Cure tooTight() {
        return Cure.of(Tell.said("waist.too-tight"), step(WearingKey.WAIST, 10, 30));
    }

    static Cure seamSnaps() {
        return Cure.of(Tell.said("band.seam-snaps", Part.share(1)));
    }

    static Cure willNotPass() {
        return Cure.of(Tell.said("band.will-not-pass"));
    }
}
