package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.GirthProfile;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

/**
 * The heights of the flat leg and the widths wanted there, from the crotch down to the leg piece's lower edge.
 *
 * <p>Above the {@code throat} the leg follows the body; at the {@code narrow} it runs straight down; below, over a
 * boot, it flares to the hem. A level that lies inside the boot is left out.
 */
record LegLine(List<Node> leg, Node narrow, Optional<Node> flare, double hemHeight, double turn, double bootCovered) {
    /**
     * Above a boot's collar its tongue and padding stand about this much over it: there the leg turns from the body's
     * line to the boot's (common practice, no source).
     */
    static final double TONGUE = 28;

    /** Above an ankle hem the leg turns within this height from the calf's line to straight down. */
    static final double ANKLE_TURN = 70;

    /** A short leg turns within this share of its length at most. */
    private static final double TURN_SHARE = 0.3;

    /** A hem on the fullest part of the calf would climb off it; one on the kneecap would rub (common practice, no source). */
    private static final double BELOW_CALF = 40;

    private static final double ABOVE_KNEE = 60;

    /** Nearer than this a level would bend the leg sharply; the boot or hem wins. */
    private static final double CLOSEST = 20;

    /** A flare shorter than this is no flare: the leg ends at the boot's top. */
    static final double SHORTEST_FLARE = 30;

    static LegLine of(
            Body body, Fabric fabric, Optional<Boot> boot, Style style, Pattern.Reductions r, double crotchWidth) {
        double flat = 1 - r.along();
        double crotch = body.mm(Measure.CROTCH_HEIGHT);
        double knee = body.mm(Measure.KNEE_HEIGHT);
        double cuff = style.cuffHeight().orElse(0);
        double hemOnBody = hemHeight(body, boot, style.leg());
        double hem = hemOnBody * flat;
        double end = hem + cuff;

        List<Node> onBody = new ArrayList<>();
        onBody.add(new Node(crotch * flat, crotchWidth, Level.Name.CROTCH, body.isHard(Measure.THIGH_GIRTH)));
        onBody.add(node(body, (crotch + knee) / 2 * flat, Measure.MID_THIGH_GIRTH, Level.Name.MID_THIGH, r));
        onBody.add(node(body, knee * flat, Measure.KNEE_GIRTH, Level.Name.KNEE, r));
        onBody.add(node(body, body.mm(Measure.CALF_HEIGHT) * flat, Measure.CALF_GIRTH, Level.Name.CALF, r));

        if (boot.isEmpty()) {
            double width = style.leg() == Style.Leg.ANKLE
                    ? ankleWidth(body, fabric, r)
                    : GirthProfile.of(body).girthAt(hemOnBody) * (1 - r.across());
            Node narrow = new Node(end, width, Level.Name.HEM);
            return assemble(onBody, narrow, Optional.empty(), hem, 0);
        }
        Boot b = boot.get();
        Node flare = new Node(end, hemWidth(b, fabric, r), Level.Name.HEM);
        double top = (body.mm(Measure.ANKLE_BONE_HEIGHT) + b.ankleToTop()) * flat;
        double ankle = body.mm(Measure.ANKLE_HEIGHT) * flat;
        Node narrow = top >= ankle
                ? new Node(top, bootTopWidth(b, body, fabric, r), Level.Name.BOOT_TOP)
                : new Node(ankle, ankleWidth(body, fabric, r), Level.Name.ANKLE);
        double covered = narrow.height() - hem;
        if (narrow.height() - end < SHORTEST_FLARE) {
            return assemble(onBody, new Node(end, flare.width(), Level.Name.HEM), Optional.empty(), hem, covered);
        }
        return assemble(onBody, narrow, Optional.of(flare), hem, covered);
    }

    private static Node node(Body body, double height, Measure girth, Level.Name level, Pattern.Reductions r) {
        return new Node(height, flat(body, girth, r), level, body.isHard(girth));
    }

    /** A girth of the leg as cut: reduced, but not where it is that of a hard socket or brace. */
    static double flat(Body body, Measure girth, Pattern.Reductions r) {
        return body.mm(girth) * (body.isHard(girth) ? 1 : 1 - r.across());
    }

    private static LegLine assemble(List<Node> body, Node narrow, Optional<Node> flare, double hem, double covered) {
        boolean boot = flare.isPresent() && narrow.level() == Level.Name.BOOT_TOP;
        double turn =
                boot ? TONGUE : Math.min(ANKLE_TURN, TURN_SHARE * (body.get(0).height() - narrow.height()));
        double throat = narrow.height() + turn;
        List<Node> leg = new ArrayList<>(
                body.stream().filter(n -> n.height() > throat + CLOSEST).toList());
        leg.add(new Node(throat, narrow.width(), null));
        return new LegLine(leg, narrow, flare, hem, turn, covered);
    }

    /** The hem's height on the wearer, mm above the floor; below 0 where the boot lifts the foot. */
    private static double hemHeight(Body body, Optional<Boot> boot, Style.Leg leg) {
        if (boot.isPresent()) {
            return body.mm(Measure.ANKLE_BONE_HEIGHT) - boot.get().ankleToHem();
        }
        return switch (leg) {
            case OVER_BOOT, ANKLE, STIRRUP -> body.mm(Measure.ANKLE_HEIGHT);
            case CALF -> body.mm(Measure.CALF_HEIGHT) - BELOW_CALF;
            case KNEE -> body.mm(Measure.KNEE_HEIGHT) + ABOVE_KNEE;
            case SHORT -> (body.mm(Measure.CROTCH_HEIGHT) + body.mm(Measure.KNEE_HEIGHT)) / 2;
        };
    }

    private static double hemWidth(Boot boot, Fabric fabric, Pattern.Reductions r) {
        return Math.max(boot.hemGirth() * (1 - r.hem()), Reducing.narrowestFor(boot.heelGirth(), fabric));
    }

    private static double bootTopWidth(Boot boot, Body body, Fabric fabric, Pattern.Reductions r) {
        double passes = boot.dressing() == Boot.Dressing.OVER_LACED_BOOT
                ? Math.max(boot.heelGirth(), boot.topGirth())
                // rolled up for lacing, the whole lower leg lies round the calf
                : Math.max(Math.max(body.mm(Measure.HEEL_GIRTH), body.mm(Measure.CALF_GIRTH)), boot.topGirth());
        return Math.max(boot.topGirth() * (1 - r.hem()), Reducing.narrowestFor(passes, fabric));
    }

    private static double ankleWidth(Body body, Fabric fabric, Pattern.Reductions r) {
        return Math.max(flat(body, Measure.ANKLE_GIRTH, r), Reducing.narrowestFor(body.mm(Measure.HEEL_GIRTH), fabric));
    }
}
