package stretchwright.settle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.balance.Cloth;
import stretchwright.balance.Girths;
import stretchwright.balance.Landmarks;
import stretchwright.balance.Motion;
import stretchwright.balance.Pose;
import stretchwright.balance.Ring;
import stretchwright.balance.Rise;
import stretchwright.balance.Tube;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.TrunkProfile;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.LoadCurve;
import stretchwright.ground.Quantities;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;

/** One half of a garment and the body in it, as plain numbers for the balance. Places are mm below the waist edge as asked. */
final class HalfGarment {
    /** Between two rings of the leg, mm on the flat piece; twice that tells edges within a mm (docs/maths/balance.md). */
    static final double APART = 40;

    static final double COARSE = 80;

    /** Rings between waist edge and crotch. */
    private static final int TRUNK = 6;

    /** The lowest of them lies this far above the crotch, share of the rise. */
    private static final double ABOVE_CROTCH = 0.07;

    /** Below the top edge's lowest spot by so much a level line meets both centre seams, mm. */
    private static final double CLEAR = 3;

    /** How cloth shears against how it stretches along, both at the start: 30 N/m at 400 (common practice, no source). */
    private static final double SHEAR = 30.0 / 400;

    /** The crotch seam's cloth is at most this share of a quarter of the trunk. */
    private static final double MOST_SEAM = 0.8;

    /** Laced into a boot a leg does not slide. */
    private static final double LACED_IN = 3;

    /** Weight of cloth that was not weighed, g/m2 (common practice, no source). */
    private static final double USUAL_WEIGHT = 250;

    /** A hip measured lower than this above the crotch is taken there, mm. */
    private static final double HIP_OVER_CROTCH = 5;

    private final Pattern pattern;
    private final Body body;
    private final Fabric fabric;
    private final Optional<Boot> boot;
    private final Style style;
    private final LegShape shape;
    private final Hoops hoops;
    private final double edge;
    private final double crotch;
    private final double flatEdge;
    private final double flatCrotch;
    private final List<LegShape.Place> leg;

    /** One leg of the pattern on that leg of the body, as {@link LegShape} has it. */
    HalfGarment(Pattern pattern, Body body, Fabric fabric, Optional<Boot> boot, Style style, double apart) {
        this.pattern = pattern;
        this.body = body;
        this.fabric = fabric;
        this.boot = boot;
        this.style = style;
        this.edge = body.mm(Measure.WAIST_HEIGHT) - style.dropBelowWaist();
        this.crotch = body.mm(Measure.CROTCH_HEIGHT);
        this.flatEdge = pattern.level(Level.Name.WAIST).orElseThrow().height();
        this.flatCrotch = pattern.crotchLine();
        this.hoops = new Hoops(pattern, style);
        this.shape = new LegShape(pattern, body, boot, style);
        this.leg = shape.places(apart).stream()
                .filter(p -> p.height() < crotch - 1)
                .toList();
    }

    Pose standing(Tube tube, Guess guess) {
        return tube.standing(bodyFront(guess), bodyBack(guess));
    }

    Pose moved(Tube tube, Guess guess, Motion motion) {
        return motion.pose(tube, landmarks(), bodyFront(guess), bodyBack(guess));
    }

    /** Middle of the kneecap, mm below the waist edge. */
    double knee() {
        return edge - body.mm(Measure.KNEE_HEIGHT);
    }

    /** Half way from crotch to knee. */
    double midThigh() {
        return (edge - crotch + knee()) / 2;
    }

    private Landmarks landmarks() {
        return new Landmarks(
                Math.min(edge - body.mm(Measure.HIP_HEIGHT), edge - crotch - HIP_OVER_CROTCH),
                edge - crotch,
                edge - body.mm(Measure.KNEE_HEIGHT));
    }

    private double sewn(Seam.Role role) {
        return pattern.seam(role).orElseThrow().length();
    }

    /** Over the body from the waist edge as asked down to the crotch point: what the seam was sewn to, not taken in. */
    private double bodyBack(Guess guess) {
        return sewn(Seam.Role.BACK_RISE) / (1 - pattern.reductions().crotch()) - pattern.backOff() + guess.crotch() / 2;
    }

    private double bodyFront(Guess guess) {
        return sewn(Seam.Role.FRONT_RISE) / (1 - pattern.reductions().crotch())
                + pattern.backOff()
                + guess.crotch() / 2;
    }

    /** What is guessed of this wearer in this cloth. */
    Guess guess() {
        return Guess.of(fabric);
    }

    /** As it is drawn. */
    TopTrial top() {
        return new TopTrial(0, OptionalDouble.empty(), Elastic.pull(pattern));
    }

    Tube tube(Guess guess, TopTrial top) {
        double flatRise = flatEdge + top.above() - flatCrotch;
        Cloth cloth = cloth(guess);
        List<Double> rest = new ArrayList<>();
        List<Ring> trunk = trunk(guess, flatRise, rest);
        List<Ring> below = leg(guess, flatRise, rest);
        return new Tube(
                trunk,
                below,
                rest,
                rest,
                trunkGirths(guess),
                legGirths(),
                cloth,
                Optional.of(rise(guess, top, trunk)),
                Optional.of(hoops.band(guess, top, cloth.round())),
                Optional.of(hoops.cuff(guess, below, cloth.round())));
    }

    /** @param rest gets the sewn length of each step */
    private List<Ring> trunk(Guess guess, double flatRise, List<Double> rest) {
        List<Ring> rings = new ArrayList<>();
        double step = (1 - ABOVE_CROTCH) / (TRUNK - 1);
        double flatStep = step * flatRise;
        for (int k = 0; k < TRUNK; k++) {
            double flat = flatCrotch + flatRise - k * flatStep;
            double width = k == 0 ? hoops.topEdge() / 2 : shape.width(Math.min(flat, shape.lowestTop() - CLEAR));
            double weight = k == 0 ? bandWeight() : weight(width, flatStep);
            rings.add(new Ring(k * step * (edge - crotch), width, 1, guess.skin(), weight));
            if (k > 0) {
                rest.add(flatStep);
            }
        }
        return rings;
    }

    private List<Ring> leg(Guess guess, double flatRise, List<Double> rest) {
        List<Ring> rings = new ArrayList<>();
        double flat = ABOVE_CROTCH * flatRise;
        double above = crotch;
        for (LegShape.Place p : leg) {
            double length = flat + (above - p.height()) / (1 + p.along());
            rings.add(
                    new Ring(edge - p.height(), p.width(), 1, friction(guess, p.height()), weight(p.width(), length)));
            rest.add(length);
            flat = 0;
            above = p.height();
        }
        return rings;
    }

    private double friction(Guess guess, double height) {
        if (boot.isEmpty()) {
            return guess.skin();
        }
        if (style.lower().outsideBoot()) {
            return height > shape.bootTop() ? guess.skin() : guess.boot();
        }
        double shaft = body.mm(Measure.ANKLE_HEIGHT) + boot.get().ankleToTop();
        return height > shaft ? guess.skin() : LACED_IN;
    }

    private double weight(double width, double length) {
        return fabric.quality().weight().orElse(USUAL_WEIGHT) / 1e6 * width * length * Quantities.NEWTONS_PER_GRAM;
    }

    private double bandWeight() {
        return weight(hoops.topEdge() / 2, 2 * style.bandHeight());
    }

    private Girths trunkGirths(Guess guess) {
        TrunkProfile trunk = TrunkProfile.of(body);
        double drop = style.dropBelowWaist();
        double hip = edge - body.mm(Measure.HIP_HEIGHT);
        List<Double> places = new ArrayList<>();
        List<Double> girths = new ArrayList<>();
        for (double s : new double[] {-drop, (hip - drop) / 2, hip, edge - crotch}) {
            if (places.isEmpty() || s > places.get(places.size() - 1) + 1) {
                places.add(s);
                girths.add((trunk.girthBelowWaist(s + drop)
                                + guess.waist() * Math.max(0, 1 - (s + drop) / (hip + drop)))
                        / 2);
            }
        }
        return new Girths(places, girths, hip, edge - leg.get(0).height());
    }

    private Girths legGirths() {
        List<Double> places = new ArrayList<>();
        List<Double> girths = new ArrayList<>();
        for (LegShape.Place p : leg) {
            places.add(edge - p.height());
            girths.add(Math.max(p.girth(), Math.min(p.width(), shape.spanned(p.height()))));
        }
        return new Girths(places, girths, edge - body.mm(Measure.HIP_HEIGHT), places.get(0));
    }

    private Cloth cloth(Guess guess) {
        LoadCurve across = fabric.test().loadAcross().times(guess.across());
        LoadCurve along = fabric.test().loadAlong().times(guess.along());
        return Cloth.ofStrips(strains(across), tensions(across), strains(along), tensions(along), guess.narrowing());
    }

    private static List<Double> strains(LoadCurve curve) {
        return curve.knots().stream().map(LoadCurve.Reading::extension).toList();
    }

    private static List<Double> tensions(LoadCurve curve) {
        return curve.knots().stream().map(LoadCurve.Reading::tension).toList();
    }

    private Rise rise(Guess guess, TopTrial top, List<Ring> trunk) {
        double width = guess.seam() * 2 * (flatEdge - flatCrotch) / Math.PI * Math.sqrt(SHEAR);
        double narrowest = trunk.stream().mapToDouble(Ring::restWidth).min().orElseThrow();
        return new Rise(
                Math.min(width, MOST_SEAM * narrowest / 2),
                sewn(Seam.Role.FRONT_RISE) + top.above(),
                sewn(Seam.Role.BACK_RISE) + top.above(),
                guess.skin());
    }
}
