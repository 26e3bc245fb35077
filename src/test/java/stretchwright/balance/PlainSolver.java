package stretchwright.balance;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The second opinion: the energy of docs/maths/balance.md written down as it stands there, its slopes by differences, a
 * full matrix, friction's capacity renewed only after each complete search.
 */
final class PlainSolver {
    private static final double NEAR = 1e-4;

    private final Tube tube;
    private final Pose pose;
    private final List<Ring> rings;
    private final int trunk;
    private final double[] ratioFront;
    private final double[] ratioBack;
    private final Map<Double, double[][]> straight = new HashMap<>();
    private double[] capacity;
    private double[] anchor;

    PlainSolver(Tube tube, Pose pose) {
        this.tube = tube;
        this.pose = pose;
        rings = tube.rings();
        trunk = tube.trunk().size();
        ratioFront = ratios(pose.skinFront());
        ratioBack = ratios(pose.skinBack());
        capacity = new double[0];
        anchor = new double[0];
    }

    /** Cloth passed, front slides of the trunk, back slides of the trunk, slides of the leg. */
    int unknowns() {
        return 1 + trunk + rings.size();
    }

    private int at(int ring, boolean front) {
        return ring >= trunk || front ? 1 + ring : 1 + rings.size() + ring;
    }

    private double[] ratios(List<Double> skin) {
        double[] ratio = new double[rings.size()];
        for (int k = 0; k < ratio.length; k++) {
            double posed = (k > 0 ? skin.get(k - 1) : 0) + (k < skin.size() ? skin.get(k) : 0);
            double from = rings.get(Math.max(0, k - 1)).place();
            double to = rings.get(Math.min(skin.size(), k + 1)).place();
            ratio[k] = posed / (to - from);
        }
        return ratio;
    }

    private double ratio(int k, boolean front) {
        return k >= trunk ? (ratioFront[k] + ratioBack[k]) / 2 : front ? ratioFront[k] : ratioBack[k];
    }

    private double girth(int k, double below, double slide) {
        double[] ring = straight.computeIfAbsent(below, this::straightened)[k];
        return ring[0] + ring[1] * slide;
    }

    /** Girth and slope at each ring in the pose. */
    private double[][] straightened(double below) {
        double[][] all = new double[rings.size()][];
        for (int k = 0; k < all.length; k++) {
            Girths girths = k < trunk ? tube.trunkGirths() : tube.legGirths();
            double place = rings.get(k).place() + below;
            double grown = 1 + pose.growth().get(k);
            double slope = girths.isLevel(place) ? 0 : girths.curve().slope(place);
            all[k] = new double[] {grown * girths.curve().value(place), grown * slope};
        }
        return all;
    }

    private double round(int k, double slide) {
        return girth(k, 0, slide) / rings.get(k).restWidth() - 1;
    }

    private double along(int k, boolean front, double[] u) {
        double rest = (front ? tube.restFront() : tube.restBack()).get(k);
        double skin = (front ? pose.skinFront() : pose.skinBack()).get(k);
        double[] ratio = front ? ratioFront : ratioBack;
        double above = u[at(k, front)];
        double below = u[at(k + 1, front)];
        double length = skin + ratio[k + 1] * below - ratio[k] * above;
        return length / rest - 1 + tube.cloth().coupling() * (round(k, above) + round(k + 1, below)) / 2;
    }

    private double carrying(int k) {
        double seam = k < trunk && tube.rise().isPresent() ? tube.rise().get().width() : 0;
        return rings.get(k).layers() * (rings.get(k).restWidth() / 2 - seam);
    }

    private double riseForce(boolean front, double[] u) {
        Rise rise = tube.rise().orElseThrow();
        return rise.width() * tube.cloth().along().tension(riseStrain(front, u));
    }

    private double riseStrain(boolean front, double[] u) {
        Rise rise = tube.rise().orElseThrow();
        double mean = 0;
        for (int k = 0; k < trunk; k++) {
            mean += round(k, 0) / trunk;
        }
        double sewn = front ? rise.sewnFront() : rise.sewnBack();
        double body = front ? pose.riseFront() + u[0] : pose.riseBack() - u[0];
        return (body - ratio(0, front) * u[at(0, front)]) / sewn
                - 1
                + tube.cloth().coupling() * mean;
    }

    private double energy(double[] u) {
        double sum = 0;
        for (boolean front : new boolean[] {true, false}) {
            for (int k = 0; k + 1 < rings.size(); k++) {
                double rest = (front ? tube.restFront() : tube.restBack()).get(k);
                sum += rest
                        * (carrying(k) + carrying(k + 1))
                        / 2
                        * tube.cloth().along().energy(along(k, front, u));
                for (int end = k; end <= k + 1; end++) {
                    Ring ring = rings.get(end);
                    sum += rest
                            / 2
                            * ring.layers()
                            * ring.restWidth()
                            / 2
                            * tube.cloth().round().energy(round(end, u[at(end, front)]));
                }
            }
            for (int k = 0; k < rings.size(); k++) {
                sum -= rings.get(k).weight() / 2 * ratio(k, front) * u[at(k, front)];
            }
            sum += hoop(tube.band().orElse(null), 0, u[at(0, front)]);
            sum += hoop(tube.cuff().orElse(null), rings.size() - 1, u[at(rings.size() - 1, front)]);
            if (tube.rise().isPresent()) {
                Rise rise = tube.rise().get();
                sum += rise.width()
                        * (front ? rise.sewnFront() : rise.sewnBack())
                        * tube.cloth().along().energy(riseStrain(front, u));
            }
        }
        for (int k = 0; k < u.length; k++) {
            double x = Math.abs(u[k] - anchor[k]);
            sum += capacity[k] * (x + Math.log((1 + Math.exp(-2 * x)) / 2));
        }
        return sum + 1e-9 * u[0] * u[0];
    }

    private double hoop(@org.jspecify.annotations.Nullable Hoop hoop, int k, double slide) {
        if (hoop == null) {
            return 0;
        }
        double girth = girth(k, hoop.below(), slide);
        return hoop.layers()
                        * hoop.height()
                        * hoop.restWidth()
                        / 2
                        * hoop.cloth().energy(girth / hoop.restWidth() - 1)
                + hoop.elastic() * girth / 2;
    }

    private double[] capacityAt(double[] u) {
        double[] c = new double[u.length];
        for (boolean front : new boolean[] {true, false}) {
            for (int k = 0; k < rings.size(); k++) {
                Ring ring = rings.get(k);
                double angle = k < trunk ? Math.PI / 2 : Math.PI;
                double normal = 0;
                for (int step = Math.max(0, k - 1); step <= Math.min(k, rings.size() - 2); step++) {
                    double rest = (front ? tube.restFront() : tube.restBack()).get(step);
                    double across = tube.cloth().round().tension(round(k, u[at(k, front)]))
                            + tube.cloth().coupling() * tube.cloth().along().tension(along(step, front, u));
                    normal += angle * ring.layers() * rest / 2 * across;
                }
                c[at(k, front)] += ring.friction() * ratio(k, front) * normal;
            }
            press(c, tube.band().orElse(null), 0, front, u);
            press(c, tube.cuff().orElse(null), rings.size() - 1, front, u);
        }
        if (tube.rise().isPresent()) {
            double turned = Math.tanh(tube.rise().get().friction() * Math.PI / 2);
            c[0] = turned * (riseForce(true, u) + riseForce(false, u));
        }
        for (int k = 0; k < c.length; k++) {
            c[k] = Math.max(0, c[k]);
        }
        return c;
    }

    private void press(double[] c, @org.jspecify.annotations.Nullable Hoop hoop, int k, boolean front, double[] u) {
        if (hoop == null) {
            return;
        }
        double strain = girth(k, hoop.below(), u[at(k, front)]) / hoop.restWidth() - 1;
        double pull = hoop.layers() * hoop.height() * hoop.cloth().tension(strain) + hoop.elastic();
        c[at(k, front)] += hoop.friction() * ratio(k, front) * (k < trunk ? Math.PI / 2 : Math.PI) * pull;
    }

    /** Slides from a state before; both arrays are renewed. */
    void settle(double[] u, double[] anchors) {
        anchor = anchors;
        capacity = capacityAt(u);
        for (int round = 0; round < 400; round++) {
            minimise(u);
            double[] next = capacityAt(u);
            double change = 0;
            for (int k = 0; k < next.length; k++) {
                change = Math.max(change, Math.abs(next[k] - capacity[k]));
                capacity[k] += (round < 5 ? 1 : 0.5) * (next[k] - capacity[k]);
            }
            if (change < 1e-6) {
                break;
            }
        }
        for (int k = 0; k < u.length; k++) {
            anchors[k] = u[k] - Math.max(-2.65, Math.min(2.65, u[k] - anchors[k]));
        }
    }

    private void minimise(double[] u) {
        for (int iteration = 0; iteration < 200; iteration++) {
            double[] slope = slope(u);
            double[] step = Dense.solve(matrix(u), slope);
            double before = energy(u);
            double along = 0;
            double largest = 0;
            for (int k = 0; k < u.length; k++) {
                along += slope[k] * step[k];
                largest = Math.max(largest, Math.abs(step[k]));
            }
            double part = Math.min(1, 20 / Math.max(largest, 1e-12));
            double[] trial = u.clone();
            for (int halving = 0; halving < 40; halving++, part /= 2) {
                for (int k = 0; k < u.length; k++) {
                    trial[k] = u[k] - part * step[k];
                }
                if (energy(trial) <= before - 1e-4 * part * along) {
                    break;
                }
            }
            System.arraycopy(trial, 0, u, 0, u.length);
            if (largest < 1e-6) {
                return;
            }
        }
    }

    private double[] slope(double[] u) {
        double[] slope = new double[u.length];
        for (int k = 0; k < u.length; k++) {
            slope[k] = (shifted(u, k, NEAR, k, 0) - shifted(u, k, -NEAR, k, 0)) / (2 * NEAR);
        }
        return slope;
    }

    private double[][] matrix(double[] u) {
        double h = 1e-2;
        double[][] matrix = new double[u.length][u.length];
        for (int i = 0; i < u.length; i++) {
            for (int j = 0; j <= i; j++) {
                double mixed = shifted(u, i, h, j, h)
                        - shifted(u, i, h, j, -h)
                        - shifted(u, i, -h, j, h)
                        + shifted(u, i, -h, j, -h);
                matrix[i][j] = mixed / (4 * h * h);
                matrix[j][i] = matrix[i][j];
            }
            matrix[i][i] += 1e-5;
        }
        return matrix;
    }

    private double shifted(double[] u, int i, double di, int j, double dj) {
        double keptI = u[i];
        double keptJ = u[j];
        u[i] += di;
        u[j] += dj;
        double energy = energy(u);
        u[j] = keptJ;
        u[i] = keptI;
        return energy;
    }
}
