package stretchwright.draft;

import stretchwright.ground.Point;

/** One layer of a band as worn: a place on it by the way from centre front and the height above the lower edge. */
interface BandFace {
    Point at(double along, double up);
}
