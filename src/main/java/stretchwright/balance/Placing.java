package stretchwright.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.MonotoneCubic;

/**
 * A tube laid on the body in one pose: which unknown stands where, and the strands of its cloth. The girth counts as
 * straight about the spot where a ring was placed.
 *
 * <p>Unknowns in order: cloth passed between the legs (where there is a rise), front and back of each trunk ring, leg rings.
 */
final class Placing {
    /** One line of cloth down the garment: half of each leg ring, a half of each trunk ring. */
    private record Line(int side, List<Double> rest, List<Double> skin, double[] ratio) {}

    private final Tube tube;
    private final Pose pose;
    private final List<Ring> rings;
    private final int trunk;
    private final int offset;
    private final double[] strain;
    private final double[] cone;
    private final Line front;
    private final Line back;
    private final Strands strands;

    Placing(Tube tube, Pose pose) {
        this.tube = tube;
        this.pose = pose;
        rings = tube.rings();
        trunk = tube.trunk().size();
        offset = tube.rise().isPresent() ? 1 : 0;
        Need.size("growths", pose.growth(), rings.size());
        Need.size("front skin lengths", pose.skinFront(), rings.size() - 1);
        Need.size("back skin lengths", pose.skinBack(), rings.size() - 1);
        strain = new double[rings.size()];
        cone = new double[rings.size()];
        strands = new Strands(offset + rings.size() + trunk);
        front = new Line(0, tube.restFront(), pose.skinFront(), ratios(pose.skinFront()));
        back = new Line(1, tube.restBack(), pose.skinBack(), ratios(pose.skinBack()));
        straighten();
        lay(front);
        lay(back);
        tube.rise().ifPresent(this::sewRise);
        tube.band().ifPresent(hoop -> pullOn(hoop, 0));
        tube.cuff().ifPresent(hoop -> pullOn(hoop, rings.size() - 1));
    }

    Net net() {
        return new Net(strands);
    }

    /** The unknown of a ring on the front (0) or the back (1); of the leg the same. */
    int unknown(int ring, int side) {
        return ring < trunk ? offset + 2 * ring + side : offset + trunk + ring;
    }

    /** As unknowns, where another tube of as many rings settled. */
    double[] slides(Settled near) {
        double[] u = new double[strands.unknowns()];
        if (hasRise()) {
            u[0] = near.passed();
        }
        for (int k = 0; k < rings.size(); k++) {
            u[unknown(k, 0)] = near.front().get(k);
            u[unknown(k, 1)] = near.back().get(k);
        }
        return u;
    }

    boolean hasRise() {
        return offset == 1;
    }

    /** Skin in the pose over standing skin at a ring, mean of both lines where both move with one unknown. */
    double ratio(int ring, int side) {
        if (ring >= trunk) {
            return (front.ratio()[ring] + back.ratio()[ring]) / 2;
        }
        return (side == 0 ? front : back).ratio()[ring];
    }

    private double[] ratios(List<Double> skin) {
        double[] ratio = new double[rings.size()];
        for (int k = 0; k < ratio.length; k++) {
            int from = Math.max(0, k - 1);
            int to = Math.min(ratio.length - 1, k + 1);
            double posed = skin.subList(from, to).stream()
                    .mapToDouble(Double::doubleValue)
                    .sum();
            ratio[k] = posed / (rings.get(to).place() - rings.get(from).place());
        }
        return ratio;
    }

    private void straighten() {
        MonotoneCubic trunkCurve = tube.trunkGirths().curve();
        MonotoneCubic legCurve = tube.legGirths().curve();
        for (int k = 0; k < rings.size(); k++) {
            Girths girths = k < trunk ? tube.trunkGirths() : tube.legGirths();
            MonotoneCubic curve = k < trunk ? trunkCurve : legCurve;
            Ring ring = rings.get(k);
            double grown = (1 + pose.growth().get(k)) / ring.restWidth();
            strain[k] = curve.value(ring.place()) * grown - 1;
            cone[k] = girths.isLevel(ring.place()) ? 0 : curve.slope(ring.place()) * grown;
        }
    }

    private void lay(Line line) {
        int[] round = new int[rings.size()];
        for (int k = 0; k < rings.size(); k++) {
            Ring ring = rings.get(k);
            double amount = belonging(line, k) * ring.layers() * ring.restWidth() / 2;
            int at = unknown(k, line.side());
            round[k] = strands.add(Strands.Strand.of(tube.cloth().round(), amount, strain[k], at, cone[k]));
            strands.load(at, -ring.weight() / 2 * ratio(k, line.side()));
            press(line, k, round[k], belonging(line, k));
        }
        for (int k = 0; k + 1 < rings.size(); k++) {
            int along = strands.add(step(line, k));
            double pressing = line.rest().get(k) / 2 * tube.cloth().coupling();
            press(line, k, along, pressing);
            press(line, k + 1, along, pressing);
        }
    }

    private Strands.Strand step(Line line, int k) {
        double rest = line.rest().get(k);
        double half = tube.cloth().coupling() / 2;
        return new Strands.Strand(
                tube.cloth().along(),
                rest * (width(k) + width(k + 1)) / 2,
                line.skin().get(k) / rest - 1 + half * (strain[k] + strain[k + 1]),
                unknown(k, line.side()),
                -line.ratio()[k] / rest + half * cone[k],
                unknown(k + 1, line.side()),
                line.ratio()[k + 1] / rest + half * cone[k + 1]);
    }

    /** Sewn length that belongs to a ring: half of the step above and of the one below. */
    private double belonging(Line line, int k) {
        double above = k == 0 ? 0 : line.rest().get(k - 1);
        double below = k == rings.size() - 1 ? 0 : line.rest().get(k);
        return (above + below) / 2;
    }

    /** Cloth that carries along on one line; beside the centre seam the rise carries. */
    private double width(int k) {
        Ring ring = rings.get(k);
        double seam = k < trunk ? tube.rise().map(Rise::width).orElse(0.0) : 0;
        return ring.layers() * (ring.restWidth() / 2 - seam);
    }

    private void press(Line line, int k, int strand, double length) {
        Ring ring = rings.get(k);
        double share = ring.friction() * turn(k) * ring.layers() * length * ratio(k, line.side());
        strands.press(unknown(k, line.side()), strand, share);
    }

    /** Angle that one line of a ring goes round: a quarter of the trunk, half of a leg. */
    private double turn(int k) {
        return k < trunk ? Math.PI / 2 : Math.PI;
    }

    private void sewRise(Rise rise) {
        double round = 0;
        for (int k = 0; k < trunk; k++) {
            round += strain[k] / trunk;
        }
        double start = tube.cloth().coupling() * round - 1;
        List<Integer> both = new ArrayList<>();
        for (int side = 0; side < 2; side++) {
            double sewn = side == 0 ? rise.sewnFront() : rise.sewnBack();
            double body = side == 0 ? pose.riseFront() : pose.riseBack();
            both.add(strands.add(new Strands.Strand(
                    tube.cloth().along(),
                    rise.width() * sewn,
                    body / sewn + start,
                    0,
                    (side == 0 ? 1 : -1) / sewn,
                    unknown(0, side),
                    -ratio(0, side) / sewn)));
        }
        double share = Math.tanh(rise.friction() * Math.PI / 2) * rise.width();
        both.forEach(strand -> strands.press(0, strand, share));
    }

    private void pullOn(Hoop hoop, int k) {
        Girths girths = k < trunk ? tube.trunkGirths() : tube.legGirths();
        double place = rings.get(k).place() + hoop.below();
        double grown = 1 + pose.growth().get(k);
        double girth = girths.curve().value(place) * grown;
        double slope = girths.isLevel(place) ? 0 : girths.curve().slope(place) * grown;
        for (int side = 0; side < 2; side++) {
            int at = unknown(k, side);
            double turned = hoop.friction() * turn(k) * ratio(k, side);
            double cloth = hoop.layers() * hoop.height();
            int strand = strands.add(Strands.Strand.of(
                    hoop.cloth(),
                    cloth * hoop.restWidth() / 2,
                    girth / hoop.restWidth() - 1,
                    at,
                    slope / hoop.restWidth()));
            strands.press(at, strand, turned * cloth);
            strands.load(at, hoop.elastic() * slope / 2);
            strands.grip(at, turned * hoop.elastic());
        }
    }

    /** Friction that a hoop has on both lines where it was placed, N; without one none. */
    double grip(Optional<Hoop> hoop, int k) {
        if (hoop.isEmpty()) {
            return 0;
        }
        Hoop ring = hoop.get();
        Girths girths = k < trunk ? tube.trunkGirths() : tube.legGirths();
        double girth = girths.curve().value(rings.get(k).place() + ring.below())
                * (1 + pose.growth().get(k));
        double tension = ring.layers() * ring.height() * ring.cloth().tension(girth / ring.restWidth() - 1);
        return Math.max(0, 2 * ring.friction() * turn(k) * (tension + ring.elastic()));
    }
}
