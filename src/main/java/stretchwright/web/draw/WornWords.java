package stretchwright.web.draw;

import stretchwright.ground.Said;
import stretchwright.intake.WearingSymptom;

/** Titles of the pictures of what a worn pair does, and the place that is ringed. */
final class WornWords {
    private WornWords() {}

    static Said title(WearingSymptom symptom) {
        return switch (symptom) {
            case BAND_SLIDES_DOWN -> Tell.said("symptom.band-slides-down");
            case BAND_ROLLS_OVER -> Tell.said("symptom.band-rolls-over");
            case GAPE_AT_BACK_WAIST -> Tell.said("symptom.gape");
            case FOLDS_BELOW_BACK_BAND -> Tell.said("symptom.folds-below-back-band");
            case BAND_DROPS_SITTING -> Tell.said("symptom.band-drops");
            case WAIST_TOO_HIGH -> Tell.said("symptom.waist-high");
            case WAIST_TOO_LOW -> Tell.said("symptom.waist-low");
            case WAIST_TOO_TIGHT -> Tell.said("symptom.waist-tight");
            case WAISTBAND_SEAM_SNAPS -> Tell.said("symptom.band-seam");
            case BAND_WILL_NOT_PASS -> Tell.said("symptom.band-hips");
            case CROTCH_HANGS_LOW -> Tell.said("symptom.crotch-low");
            case FOLD_UNDER_FRONT_BAND -> Tell.said("symptom.fold-front-band");
            case CREASE_INTO_FRONT -> Tell.said("symptom.crease-front");
            case BACK_SEAM_CUTS_IN -> Tell.said("symptom.back-seam");
            case SAG_BELOW_SEAT -> Tell.said("symptom.sag");
            case DRAG_LINES -> Tell.said("symptom.drag-lines");
            case PRESSURE_IN_FRONT -> Tell.said("symptom.pressure-front");
            case CROTCH_SEAM_BURSTS -> Tell.said("symptom.crotch-bursts");
            case NO_RANGE_IN_SPLITS -> Tell.said("symptom.splits");
            case TIGHT_CALF -> Tell.said("symptom.tight-calf");
            case BAGGY_KNEES -> Tell.said("symptom.baggy-knees");
            case FOLDS_BEHIND_KNEE -> Tell.said("symptom.folds-knee");
            case HEM_CREEPS_UP -> Tell.said("symptom.creeps-up");
            case LEGS_TOO_SHORT -> Tell.said("symptom.too-short");
            case LEGS_TOO_LONG -> Tell.said("symptom.too-long");
            case LEG_TWISTS -> Tell.said("symptom.twists");
            case SEE_THROUGH -> Tell.said("symptom.see-through");
            case HEM_WILL_NOT_PASS -> Tell.said("symptom.hem-pass");
            case HEM_RIDES_UP -> Tell.said("symptom.rides-up");
            case LOOSE_LEG -> Tell.said("symptom.loose-leg");
            case LACES -> Tell.said("symptom.laces");
            case HEM_WAVY -> Tell.said("symptom.wavy");
        };
    }

    static Said place(WearingSymptom symptom) {
        return switch (symptom) {
            case BAND_SLIDES_DOWN,
                    BAND_ROLLS_OVER,
                    WAIST_TOO_HIGH,
                    WAIST_TOO_LOW,
                    WAIST_TOO_TIGHT,
                    WAISTBAND_SEAM_SNAPS -> Tell.said("place.waist");
            case GAPE_AT_BACK_WAIST, FOLDS_BELOW_BACK_BAND, BAND_DROPS_SITTING -> Tell.said("place.back-waist");
            case FOLD_UNDER_FRONT_BAND -> Tell.said("place.front-waist");
            case BAND_WILL_NOT_PASS -> Tell.said("place.hip");
            case CROTCH_HANGS_LOW, CREASE_INTO_FRONT, DRAG_LINES, CROTCH_SEAM_BURSTS -> Tell.said("place.crotch");
            case BACK_SEAM_CUTS_IN, SAG_BELOW_SEAT, SEE_THROUGH -> Tell.said("place.seat");
            case PRESSURE_IN_FRONT -> Tell.said("place.belly");
            case NO_RANGE_IN_SPLITS -> Tell.said("place.thighs");
            case TIGHT_CALF -> Tell.said("place.calf");
            case BAGGY_KNEES -> Tell.said("place.knee");
            case FOLDS_BEHIND_KNEE -> Tell.said("place.knee-back");
            case HEM_CREEPS_UP, LEGS_TOO_SHORT, LEGS_TOO_LONG, HEM_WAVY -> Tell.said("place.hem");
            case LEG_TWISTS -> Tell.said("place.leg");
            case HEM_WILL_NOT_PASS -> Tell.said("place.boot-heel");
            case HEM_RIDES_UP -> Tell.said("place.boot-top");
            case LOOSE_LEG -> Tell.said("place.blade");
            case LACES -> Tell.said("place.laces");
        };
    }
}
