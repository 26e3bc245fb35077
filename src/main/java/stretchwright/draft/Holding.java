package stretchwright.draft;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import stretchwright.body.Body;
import stretchwright.body.Comfort;
import stretchwright.body.GirthProfile;
import stretchwright.body.Measure;
import stretchwright.body.SkinExtension;
import stretchwright.fabric.AsWorn;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Laplace;
import stretchwright.ground.Said;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Dimension.What;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;
import stretchwright.pattern.LevelHold.Bound;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.Style;
import stretchwright.pattern.WhichLeg;

/**
 * How much is taken off each girth so that the garment holds as wanted, and what kept it from taking more.
 *
 * <p>With a measured load curve hold is a pressure, and the strain is the one whose tension gives it round that girth;
 * with an assumed curve it is a share of the stretch; a fixed reduction is taken as it is. Rules and sources:
 * docs/maths/draft.md, Hold.
 */
final class Holding {
    /** The levels of a leg, from the top down. */
    static final List<Level.Name> LEG =
            List.of(Level.Name.CROTCH, Level.Name.MID_THIGH, Level.Name.KNEE, Level.Name.CALF, Level.Name.ANKLE);

    static final Said SOURCE = Tell.said("source.hold");

    /** Kept of the stretch for the deepest pose, because the cut is rounded and cloth varies: 0.2 points. */
    private static final double POSE_RESERVE = 0.002;

    private final Map<Level.Name, Held> levels = new EnumMap<>(Level.Name.class);
    private final Body body;
    private final Fabric fabric;
    private final Style style;
    private final WhichLeg leg;
    private final double along;
    private final AsWorn cloth;
    private final boolean ankle;
    private final double standing;

    private Holding(Body body, Fabric fabric, Style style, double along, WhichLeg leg) {
        this.body = body;
        this.fabric = fabric;
        this.style = style;
        this.along = along;
        this.cloth = AsWorn.of(fabric, 1 / (1 - along) - 1);
        this.leg = leg;
        this.ankle = style.leg() == Style.Leg.ANKLE || style.leg() == Style.Leg.STIRRUP;
        this.standing = Math.min(
                Reducing.MOST_STRAIN,
                Reducing.share(Hold.Named.FIRM) * fabric.test().stretchAcross());
    }

    /**
     * @param along share taken off the leg's lengths: stretched along, the cloth's pull is spread thinner
     * @param leg of which the reasons are told
     */
    static Holding of(Body body, Fabric fabric, Style style, double along, WhichLeg leg) {
        Holding holding = new Holding(body, fabric, style, along, leg);
        holding.plan(Wanted.of(body, fabric, style.hold()));
        return holding;
    }

    private void plan(Wanted wanted) {
        for (Level.Name level : LEG) {
            levels.put(level, at(level, wanted));
        }
        if (wanted.isPressure()) {
            boolean calf = style.leg() != Style.Leg.KNEE && style.leg() != Style.Leg.SHORT;
            levels.put(Level.Name.CROTCH, noTighterThanBelow(Level.Name.CROTCH, calf));
            levels.put(Level.Name.MID_THIGH, noTighterThanBelow(Level.Name.MID_THIGH, calf));
        }
        levels.put(Level.Name.HIP, hip(wanted));
    }

    Held at(Level.Name level) {
        Held at = levels.get(level);
        if (at == null) {
            throw new IllegalArgumentException("no hold is planned at the " + level.word());
        }
        return at;
    }

    /** Share taken off between the levels, in proportion; beyond the ends the end's own. */
    double reductionAt(double height) {
        Held above = at(LEG.get(0));
        if (height >= above.height()) {
            return above.reduction();
        }
        for (Level.Name level : LEG.subList(1, LEG.size())) {
            Held below = at(level);
            if (height >= below.height()) {
                double share = (height - below.height()) / (above.height() - below.height());
                return below.reduction() + share * (above.reduction() - below.reduction());
            }
            above = below;
        }
        return above.reduction();
    }

    /**
     * The narrowest that the thigh may be cut so that it presses no more than the leg below it.
     *
     * @param calf width of the calf as cut; empty where the garment does not reach it
     * @param end width of the lower end as cut
     */
    double narrowestThigh(Level.Name level, OptionalDouble calf, double end) {
        Held at = at(level);
        if (at.wanted().isEmpty()) {
            return 0;
        }
        double limit = ankle ? ankleLimit(end) : Double.POSITIVE_INFINITY;
        if (calf.isPresent()) {
            limit = Math.min(limit, pressure(at(Level.Name.CALF), calf.getAsDouble()));
        }
        return limit == Double.POSITIVE_INFINITY ? 0 : at.girth() / (1 + strainFor(limit, at.girth()));
    }

    /** The width of the flat leg, or of the whole garment at the hip. */
    Ruled width(Level.Name level) {
        Measure girth = girth(level);
        Ruled plain = Ruled.of(
                at(level).width(),
                Tell.said("rule.width", girth.said()),
                level == Level.Name.HIP ? Tell.said("source.frame") : Tell.said("source.leg"),
                Inputs.padded(body, girth, style.parts()),
                taken(level));
        double ease = at(level).ease();
        return ease == 0 ? plain : plain.with(Inputs.style(Tell.said("input.ease", level.said()), ease));
    }

    /** Why so much is taken off at the levels that this leg is drafted at; the ankle's share widens what must pass. */
    List<Reason> reasons(List<Level> drawn) {
        List<Reason> out = new ArrayList<>();
        for (Level level : drawn) {
            if (level.name() == Level.Name.HIP || LEG.contains(level.name())) {
                out.add(at(level.name()).bounded().percent(dimension(level.name())));
            }
        }
        if (drawn.stream().noneMatch(l -> l.name() == Level.Name.ANKLE)) {
            out.add(at(Level.Name.ANKLE).bounded().percent(dimension(Level.Name.ANKLE)));
        }
        return out;
    }

    /** The share taken off at a level, as what goes into a further rule. */
    Input taken(Level.Name level) {
        return Inputs.share(dimension(level), at(level).reduction());
    }

    private Dimension dimension(Level.Name level) {
        return switch (level) {
            case HIP -> Dimension.of(What.REDUCTION_ACROSS);
            case CROTCH -> its(What.REDUCTION_AT_THE_CROTCH);
            case MID_THIGH -> its(What.REDUCTION_AT_THE_MID_THIGH);
            case KNEE -> its(What.REDUCTION_AT_THE_KNEE);
            case CALF -> its(What.REDUCTION_AT_THE_CALF);
            default -> its(What.REDUCTION_AT_THE_ANKLE);
        };
    }

    private Dimension its(What what) {
        return Dimension.of(PieceName.of(PieceKind.LEG, leg), what);
    }

    private Held at(Level.Name level, Wanted wanted) {
        double girth = body.mm(girth(level));
        double ease = style.ease().getOrDefault(level, 0.0);
        double height = height(level, body);
        if (body.isHard(girth(level))) {
            Ruled nothing = Ruled.of(0, Tell.said("rule.hard"), SOURCE);
            return Held.unbounded(height, girth, nothing, OptionalDouble.empty(), Bound.HARD, ease);
        }
        OptionalDouble kPa = wanted.pressure(level);
        double strain = kPa.isPresent() ? strainFor(kPa.getAsDouble(), girth) : wanted.strain();
        double pose = level == Level.Name.KNEE ? poseLimit(SkinExtension.Region.KNEE) : Double.POSITIVE_INFINITY;
        return bounded(height, girth(level), kPa, wanted.ruled(level, strain), wanted.isFixed(), pose, ease);
    }

    /** Above the crotch the cloth runs on as it is stretched at the thigh, or as the wearer's own profile says. */
    private Held hip(Wanted wanted) {
        double girth = body.mm(Measure.HIP_GIRTH);
        OptionalDouble kPa = wanted.pressure(Level.Name.HIP);
        Held thigh = at(Level.Name.CROTCH);
        double strain = kPa.isPresent()
                ? strainFor(kPa.getAsDouble(), girth)
                : wanted.isPressure() && thigh.bound() != Bound.HARD ? thigh.strain() : wanted.strain();
        Ruled ruled = wanted.ruled(Level.Name.HIP, strain);
        return bounded(
                body.mm(Measure.HIP_HEIGHT),
                Measure.HIP_GIRTH,
                kPa,
                wanted.isPressure() && kPa.isEmpty() ? ruled.with(taken(Level.Name.CROTCH)) : ruled,
                wanted.isFixed(),
                poseLimit(SkinExtension.Region.SEAT),
                style.ease().getOrDefault(Level.Name.HIP, 0.0));
    }

    /** @param wanted the strain */
    private Held bounded(
            double height, Measure of, OptionalDouble kPa, Ruled wanted, boolean fixed, double pose, double ease) {
        double girth = body.mm(of);
        double strain = wanted.value();
        if (fixed) {
            return Held.unbounded(height, girth, wanted.with(Reducing.reduction(strain)), kPa, Bound.NONE, ease);
        }
        double comfort = fabric.test().loadAcross().isAssumed()
                ? Double.POSITIVE_INFINITY
                : Comfortable.strain(body, fabric, of, Comfort.CAUTION, 1, along);
        Map<Bound, Double> limits = new EnumMap<>(Bound.class);
        limits.put(Bound.STANDING, standing);
        limits.put(Bound.POSE, pose);
        limits.put(Bound.COMFORT, comfort);
        limits.put(Bound.READINGS, lastReading());
        Bound bound = Bound.NONE;
        double least = strain;
        for (Map.Entry<Bound, Double> limit : limits.entrySet()) {
            if (limit.getValue() < least) {
                least = limit.getValue();
                bound = limit.getKey();
            }
        }
        Bound keeps = pose <= comfort ? Bound.POSE : Bound.COMFORT;
        Ruled taken = wanted.with(Reducing.reduction(least));
        return new Held(height, girth, taken, kPa, bound, Math.min(pose, comfort), keeps, ease);
    }

    /** Beyond the last reading nothing is known of the cloth: no width is planned there. */
    private double lastReading() {
        return fabric.test().loadAcross().isAssumed()
                ? Double.POSITIVE_INFINITY
                : fabric.test().loadAcross().lastExtension();
    }

    /** Standing strain that leaves the cloth enough for the pose that widens the skin most. */
    private double poseLimit(SkinExtension.Region region) {
        return Math.max(
                0, (1 + fabric.test().stretchAcross() - POSE_RESERVE) / (1 + SkinExtension.mostAcross(region)) - 1);
    }

    private Held noTighterThanBelow(Level.Name level, boolean calf) {
        Held at = at(level);
        OptionalDouble below = calf ? OptionalDouble.of(at(Level.Name.CALF).width()) : OptionalDouble.empty();
        double narrowest = narrowestThigh(level, below, at(Level.Name.ANKLE).width());
        if (at.bound() == Bound.HARD || at.girth() * (1 - at.reduction()) >= narrowest) {
            return at;
        }
        return at.lessened(1 - narrowest / at.girth(), Bound.TOURNIQUET);
    }

    /** A thigh no tighter than the ankle either, but a pressure that is not felt does no harm. */
    private double ankleLimit(double width) {
        return Math.max(pressure(at(Level.Name.ANKLE), width), Laplace.fromMmHg(Comfort.NEGLIGIBLE));
    }

    /** Pressure, kPa, of one layer of this width at the level. */
    double pressure(Held at, double width) {
        double strain = Math.max(0, at.girth() / width - 1);
        return Laplace.kilopascals(cloth.tension(strain) * (1 - along), at.girth());
    }

    /** Strain across whose tension, spread over the length as worn, gives the pressure round the girth. */
    private double strainFor(double kPa, double girth) {
        return cloth.extension(Laplace.tension(kPa, girth) / (1 - along));
    }

    static Measure girth(Level.Name level) {
        return switch (level) {
            case HIP -> Measure.HIP_GIRTH;
            case CROTCH -> Measure.THIGH_GIRTH;
            case MID_THIGH -> Measure.MID_THIGH_GIRTH;
            case KNEE -> Measure.KNEE_GIRTH;
            case CALF -> Measure.CALF_GIRTH;
            default -> Measure.ANKLE_GIRTH;
        };
    }

    static double height(Level.Name level, Body body) {
        return switch (level) {
            case HIP -> body.mm(Measure.HIP_HEIGHT);
            case CROTCH -> GirthProfile.furrow(body);
            case MID_THIGH -> (body.mm(Measure.CROTCH_HEIGHT) + body.mm(Measure.KNEE_HEIGHT)) / 2;
            case KNEE -> body.mm(Measure.KNEE_HEIGHT);
            case CALF -> body.mm(Measure.CALF_HEIGHT);
            default -> body.mm(Measure.ANKLE_HEIGHT);
        };
    }
}
