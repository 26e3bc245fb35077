package stretchwright.sewing;

/**
 * What the fit check found of a seam in the worst pose.
 *
 * @param seam as named in the pattern
 * @param needed strain along it, a share
 */
public record SeamStrain(String seam, String pose, double needed) {}
