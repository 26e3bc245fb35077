package stretchwright.draft;

/**
 * The top for one give: 0 takes what is usual off crotch seam and rise, 1 all that the cloth allows, -1 little.
 *
 * @param side height of the waist edge at the side, mm
 * @param estimate so many times its estimate the total crotch length was taken; 1 where it was measured
 * @param backOff by how much the back is longer than its measure asks, so that it stands no higher than a back can, mm flat
 * @param ends how far centre front and centre back are to stand above it, together, mm
 */
record RiseTrial(
        double give,
        Fork fork,
        CrotchBend front,
        CrotchBend back,
        double side,
        double ends,
        double crotchTaken,
        double riseTaken,
        double estimate,
        double hipHeight,
        double backOff) {
    double up() {
        return front.waist() + back.waist() - 2 * side;
    }

    double tilt() {
        return back.waist() - front.waist();
    }

    /** By how much the ends stand higher than they are to, together, mm. */
    double over() {
        return up() - ends;
    }

    double tightest() {
        return Math.min(front.tightest(), back.tightest());
    }

    /** Whether both centre seams leave their bends well below the waist. */
    boolean isDrawn(double least) {
        return front.isDrawn(least) && back.isDrawn(least);
    }
}
