package stretchwright.sewing;

/** Names that the draft gives to edges, marks, notches and what is bought. */
final class Named {
    static final String LOWER_EDGE = "lower edge";
    static final String UPPER_EDGE = "upper edge";

    /** The upper one of the two notches between which a knee is eased. */
    static final String ABOVE_KNEE = "above knee";

    static final String FOLD_THE_DART = "fold the dart";
    static final String KEY_POCKET = "key pocket";
    static final String EYELET = "eyelet";
    /** Beginning of the row that keeps an elastic or a cord at the fold. */
    static final String ROW_BELOW = "row below the";

    static final String WAIST_ELASTIC = "waist elastic";
    static final String SOLE_ELASTIC = "sole elastic";
    static final String CORD = "cord";
    static final String STRAP = "strap";

    private Named() {}
}
