package stretchwright.wearing;

import java.util.Optional;
import stretchwright.ground.Said;
import stretchwright.intake.WearingSymptom;

/** Every symptom with its cure, and the question where two opposite ones need it. */
final class Cures {
    private Cures() {}

    /** @param answer "yes" or "no"; without meaning where nothing is asked */
    static Cure of(WearingSymptom symptom, String answer) {
        boolean yes = !answer.equals("no");
        return switch (symptom) {
            case BAND_SLIDES_DOWN -> TopCures.slidesDown();
            case BAND_ROLLS_OVER -> TopCures.rollsOver();
            case GAPE_AT_BACK_WAIST -> TopCures.gape();
            case FOLDS_BELOW_BACK_BAND -> yes ? TopCures.tightOverSeat() : TopCures.backTooLong();
            case BAND_DROPS_SITTING -> TopCures.dropsSitting();
            case WAIST_TOO_HIGH -> TopCures.tooHigh();
            case WAIST_TOO_LOW -> TopCures.tooLow();
            case WAIST_TOO_TIGHT -> TopCures.tooTight();
            case WAISTBAND_SEAM_SNAPS -> TopCures.seamSnaps();
            case BAND_WILL_NOT_PASS -> TopCures.willNotPass();
            case CROTCH_HANGS_LOW -> yes ? RiseCures.legsTooTight() : RiseCures.riseTooLong();
            case FOLD_UNDER_FRONT_BAND -> RiseCures.frontTooLong();
            case CREASE_INTO_FRONT -> RiseCures.frontCurve();
            case BACK_SEAM_CUTS_IN -> RiseCures.backCurve();
            case SAG_BELOW_SEAT -> RiseCures.flatSeat();
            case DRAG_LINES -> RiseCures.fullSeat();
            case PRESSURE_IN_FRONT -> RiseCures.frontTooShort();
            case CROTCH_SEAM_BURSTS -> RiseCures.bursts();
            case NO_RANGE_IN_SPLITS -> RiseCures.splits();
            case TIGHT_CALF -> LegCures.tightCalf();
            case BAGGY_KNEES -> LegCures.baggyKnees();
            case FOLDS_BEHIND_KNEE -> LegCures.foldsBehindKnee();
            case HEM_CREEPS_UP -> LegCures.hemCreepsUp();
            case LEGS_TOO_SHORT -> LegCures.tooShort();
            case LEGS_TOO_LONG -> LegCures.tooLong();
            case LEG_TWISTS -> LegCures.twists();
            case SEE_THROUGH -> LegCures.seeThrough();
            case HEM_WILL_NOT_PASS -> HemCures.willNotPass();
            case HEM_RIDES_UP -> HemCures.ridesUp();
            case LOOSE_LEG -> HemCures.looseLeg();
            case LACES -> HemCures.laces();
            case HEM_WAVY -> HemCures.wavy();
        };
    }

    static Optional<Said> question(WearingSymptom symptom) {
        return switch (symptom) {
            case FOLDS_BELOW_BACK_BAND -> Optional.of(Tell.said("question.folds-below-back-band"));
            case CROTCH_HANGS_LOW -> Optional.of(Tell.said("question.crotch-hangs-low"));
            default -> Optional.empty();
        };
    }
}
