package stretchwright.web.draw;

/**
 * Where the pair ends on its wearer, mm above the floor of the bare foot.
 *
 * @param frontTop upper edge at centre front
 * @param backTop the same behind
 * @param frontHem lower edge in front; below the floor of the bare foot it is negative
 * @param backHem the same behind
 */
public record WornEdges(double frontTop, double backTop, double frontHem, double backHem) {}
