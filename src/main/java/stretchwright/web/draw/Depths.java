package stretchwright.web.draw;

import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;

/**
 * Half depths and half breadths of a body's sections from its girths, mm. Trunk sections are ellipses: depth over breadth,
 * means of the US Army surveys of 1988 and 2012, waist at the navel 0.71 women and 0.73 men; hip 0.66 and 0.72; children
 * half way between. Legs are nearly round: the shares by which knee, shin and ankle are deeper than broad are free drawing
 * (no source).
 */
final class Depths {
    private final Body body;

    Depths(Body body) {
        this.body = body;
    }

    double leg(Measure girth, double share) {
        return share * body.mm(girth) / (2 * Math.PI);
    }

    double waistBreadth() {
        return halfBreadth(body.mm(Measure.WAIST_GIRTH), waistRatio());
    }

    double waistDepth() {
        return waistBreadth() * waistRatio();
    }

    double hipBreadth() {
        return halfBreadth(body.mm(Measure.HIP_GIRTH), hipRatio());
    }

    double hipDepth() {
        return hipBreadth() * hipRatio();
    }

    private double waistRatio() {
        return byFigure(0.71, 0.73, 0.72);
    }

    private double hipRatio() {
        return byFigure(0.66, 0.72, 0.69);
    }

    double byFigure(double woman, double man, double child) {
        return body.figure() == Figure.WOMAN ? woman : body.figure() == Figure.MAN ? man : child;
    }

    /**
     * Half the longer axis of an ellipse of that girth; Ramanujan's approximation of the perimeter (Quarterly Journal of
     * Mathematics 45, 1914).
     */
    private static double halfBreadth(double girth, double ratio) {
        double h = Math.pow((1 - ratio) / (1 + ratio), 2);
        return girth / (Math.PI * (1 + ratio) * (1 + 3 * h / (10 + Math.sqrt(4 - 3 * h))));
    }
}
