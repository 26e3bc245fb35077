package stretchwright.pattern;

import java.util.Locale;
import java.util.Optional;
import stretchwright.ground.Said;

/**
 * A dimension of the pattern that can be asked why it is what it is.
 *
 * @param of the piece or leg it is measured on; empty for what holds for the whole garment
 */
public record Dimension(Optional<PieceName> of, What what) implements Reason.From {
    /** What is measured. */
    public enum What {
        REDUCTION_ACROSS(Tell.said("dimension.reduction-across")),
        REDUCTION_ALONG(Tell.said("dimension.reduction-along")),
        REDUCTION_OF_THE_RISE(Tell.said("dimension.reduction-of-the-rise")),
        REDUCTION_ALONG_THE_CROTCH_SEAM_AS_USUAL(Tell.said("dimension.reduction-along-the-crotch-seam-as-usual")),
        REDUCTION_ALONG_THE_CROTCH_SEAM(Tell.said("dimension.reduction-along-the-crotch-seam")),
        REDUCTION_OF_THE_WAISTBAND(Tell.said("dimension.reduction-of-the-waistband")),
        REDUCTION_AT_HEM_AND_BOOT(Tell.said("dimension.reduction-at-hem-and-boot")),
        REDUCTION_AT_THE_CROTCH(Tell.said("dimension.reduction-at-the-crotch")),
        REDUCTION_AT_THE_MID_THIGH("reduction at the mid-thigh", Tell.said("dimension.reduction-at-the-mid-thigh")),
        REDUCTION_AT_THE_KNEE(Tell.said("dimension.reduction-at-the-knee")),
        REDUCTION_AT_THE_CALF(Tell.said("dimension.reduction-at-the-calf")),
        REDUCTION_AT_THE_ANKLE(Tell.said("dimension.reduction-at-the-ankle")),
        HIP_WIDTH("hip width, both legs", Tell.said("dimension.hip-width")),
        CROTCH_WIDTH(Tell.said("dimension.crotch-width")),
        THIGH_WIDTH(Tell.said("dimension.thigh-width")),
        MID_THIGH_WIDTH("mid-thigh width", Tell.said("dimension.mid-thigh-width")),
        KNEE_WIDTH(Tell.said("dimension.knee-width")),
        CALF_WIDTH(Tell.said("dimension.calf-width")),
        CROTCH_HEIGHT(Tell.said("dimension.crotch-height")),
        LOWER_EDGE_HEIGHT(Tell.said("dimension.lower-edge-height")),
        CROTCH_SEAM_LENGTH(Tell.said("dimension.crotch-seam-length")),
        FRONT_CROTCH_LENGTH(Tell.said("dimension.front-crotch-length")),
        BACK_CROTCH_LENGTH(Tell.said("dimension.back-crotch-length")),
        FRONT_INSEAM_LENGTH(Tell.said("dimension.front-inseam-length")),
        BACK_INSEAM_LENGTH(Tell.said("dimension.back-inseam-length")),
        WAIST_EDGE_LENGTH(Tell.said("dimension.waist-edge-length")),
        WAIST_EDGE_ABOVE_ITS_PLACE(Tell.said("dimension.waist-edge-above-its-place")),
        HEM_HEIGHT(Tell.said("dimension.hem-height")),
        HEM_DROP(Tell.said("dimension.hem-drop")),
        HEM_LENGTH(Tell.said("dimension.hem-length")),
        DART_WIDTH(Tell.said("dimension.dart-width")),
        DART_LENGTH(Tell.said("dimension.dart-length")),
        TURNED_DOWN_AT_THE_WAIST(Tell.said("dimension.turned-down-at-the-waist")),
        LENGTH_STANDING(Tell.said("dimension.length-standing")),
        LENGTH_AS_CUT(Tell.said("dimension.length-as-cut")),
        LENGTH_BENT(Tell.said("dimension.length-bent")),
        LENGTH_OVER_THE_BOOT(Tell.said("dimension.length-over-the-boot")),
        LENGTH_WITH_GROWTH_LET_DOWN(Tell.said("dimension.length-with-growth-let-down")),
        GUSSET_TAKES_OF_EACH_CROTCH_CURVE(Tell.said("dimension.gusset-takes-of-each-crotch-curve")),
        GUSSET_TAKES_OF_EACH_INSEAM(Tell.said("dimension.gusset-takes-of-each-inseam")),
        ROOM_FROM_THE_GUSSET(Tell.said("dimension.room-from-the-gusset")),
        KNEE_EASE(Tell.said("dimension.knee-ease")),
        SIDE_TAKE_IN("side take-in", Tell.said("dimension.side-take-in")),
        WIDTH(Tell.said("dimension.width")),
        HEIGHT(Tell.said("dimension.height")),
        LENGTH(Tell.said("dimension.length")),
        DEPTH(Tell.said("dimension.depth")),
        WAIST_ELASTIC_CUT_LENGTH("waist elastic: cut length", Tell.said("dimension.waist-elastic-cut-length")),
        WAIST_ELASTIC_WIDTH("waist elastic: width", Tell.said("dimension.waist-elastic-width")),
        CORD_CUT_LENGTH("cord: cut length", Tell.said("dimension.cord-cut-length")),
        LOWER_EDGE_ALL_ROUND(Tell.said("dimension.lower-edge-all-round")),
        UPPER_EDGE_ALL_ROUND(Tell.said("dimension.upper-edge-all-round")),
        LOWER_EDGE(Tell.said("dimension.lower-edge")),
        UPPER_EDGE(Tell.said("dimension.upper-edge")),
        HEEL_TO_INSTEP(Tell.said("dimension.heel-to-instep"));

        private final String word;
        private final Said said;

        What(Said said) {
            this.word = name().toLowerCase(Locale.ROOT).replace('_', ' ');
            this.said = said;
        }

        What(String word, Said said) {
            this.word = word;
            this.said = said;
        }

        /** As written in the report. */
        public String word() {
            return word;
        }

        public Said said() {
            return said;
        }
    }

    /** Of the whole garment. */
    public static Dimension of(What what) {
        return new Dimension(Optional.empty(), what);
    }

    public static Dimension of(PieceName of, What what) {
        return new Dimension(Optional.of(of), what);
    }

    /** As written in the report, and asked for: "leg: knee width". */
    @Override
    public String word() {
        return of.map(o -> o + ": " + what.word()).orElse(what.word());
    }

    @Override
    public Said said() {
        return of.map(o -> Tell.said("dimension.of", o.said(), what.said())).orElse(what.said());
    }
}
