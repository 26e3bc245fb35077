package stretchwright.balance;

import java.util.List;

/**
 * What the body does to a tube in one pose.
 *
 * @param growth of the girth under each ring, a share, waist edge first
 * @param skinFront length on the skin of each step between rings, front line, mm
 * @param riseFront waist edge as placed to crotch point, on the body, mm
 */
public record Pose(
        List<Double> growth, List<Double> skinFront, List<Double> skinBack, double riseFront, double riseBack) {
    public Pose {
        growth = List.copyOf(growth);
        skinFront = List.copyOf(skinFront);
        skinBack = List.copyOf(skinBack);
        growth.forEach(g -> Need.between("growth", g, -0.5, 2));
        skinFront.forEach(l -> Need.positive("skin length", l));
        skinBack.forEach(l -> Need.positive("skin length", l));
        Need.between("front rise", riseFront, 0, 10_000);
        Need.between("back rise", riseBack, 0, 10_000);
    }
}
