package stretchwright.balance;

/**
 * Where joints lie below the waist edge, mm along the skin of the standing body.
 *
 * @param hip level of the hip girth
 * @param crotch where trunk turns into leg
 * @param knee middle of the kneecap
 */
public record Landmarks(double hip, double crotch, double knee) {
    public Landmarks {
        Need.finite("hip", hip);
        Need.positive("way from hip to crotch", crotch - hip);
        Need.positive("way from crotch to knee", knee - crotch);
    }

    double thigh() {
        return knee - crotch;
    }
}
