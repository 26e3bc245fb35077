package stretchwright.sewing;

import stretchwright.ground.Part;
import stretchwright.pattern.SeamName;

/**
 * What the fit check found of a seam in the worst pose.
 *
 * @param seam as named in the pattern
 * @param pose its name, as it is told
 * @param needed strain along it, a share
 */
public record SeamStrain(SeamName seam, Part pose, double needed) {}
