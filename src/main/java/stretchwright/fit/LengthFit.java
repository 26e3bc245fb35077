package stretchwright.fit;

import stretchwright.ground.Part;

/**
 * A finished length or width and what is left after washing, mm.
 *
 * @param what a seam, or the width at a level
 */
public record LengthFit(Part what, Direction direction, double cut, double washed) {}
