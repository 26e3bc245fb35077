package stretchwright.sewing;

/** Names that the draft gives to what is bought. */
final class Named {
    static final String WAIST_ELASTIC = "waist elastic";
    static final String SOLE_ELASTIC = "sole elastic";
    static final String CORD = "cord";
    static final String STRAP = "strap";

    private Named() {}
}
