package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.body.Body;
import stretchwright.body.GirthProfile;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.ground.Grid;
import stretchwright.pattern.Dimension.What;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Shift;
import stretchwright.pattern.Style;

/**
 * The heights of the flat leg and the widths wanted there, from the seat fold down to the leg piece's lower edge.
 *
 * <p>Above the {@code throat} the leg follows the body; at the {@code narrow} it runs straight down; below, over a
 * boot, it flares to the hem. A level that lies inside the boot is left out.
 *
 * @param crotch height of the crotch line on the flat piece, mm
 * @param leg from the seat fold down
 * @param hemHeight of the finished edge on the flat piece, at the inseam
 * @param bootTop of the boot's top edge on the flat piece, where the leg lies over it
 * @param bootCovered from the narrow down to the finished edge
 * @param wider by how much a leg without a flare is to end wider than its narrow, as the maker wants it, mm
 */
record LegLine(
        double crotch,
        List<Node> leg,
        Node narrow,
        Optional<Node> flare,
        double hemHeight,
        double turn,
        double bootCovered,
        OptionalDouble bootTop,
        double wider) {
    /**
     * Above a boot's collar its tongue and padding stand about this much over it, mm: there the leg turns from the
     * body's line to the boot's (common practice, no source: docs/maths/draft.md, the leg).
     */
    static final double TONGUE = 28;

    /** Above an ankle hem the leg turns within this height, mm, from the calf's line to straight down (same). */
    static final double ANKLE_TURN = 70;

    /** Half way round an S from calf to boot the edge leans twice as much as from end to end, with room for a radius of 60 mm (same). */
    private static final double TURN_RADIUS = 80;

    /** A short leg turns within this share of its length at most, so that a body line is left (same). */
    private static final double TURN_SHARE = 0.3;

    /** And within this share of the way up to the next level, so that its curve is not squeezed (same). */
    private static final double CALF_SHARE = 0.5;

    /** Nearer to the throat than this, mm, a level would bend the leg sharply; the boot or hem wins (same). */
    private static final double CLOSEST = 20;

    /** A flare shorter than this, mm, is no flare: the leg ends at the boot's top (same). */
    static final double SHORTEST_FLARE = 30;

    /** A boot top nearer to the leg's lower edge than this, mm, cannot be marked apart from it (same). */
    private static final double SHORTEST_MARK = 10;

    static LegLine of(Order order) {
        Style style = order.style();
        List<Node> onBody = onBody(order);
        if (order.boot().isEmpty() || !style.lower().outsideBoot()) {
            return onLeg(order, onBody);
        }
        return overBoot(order, order.boot().get(), onBody);
    }

    /**
     * The thigh girth was taken at the seat fold, and stands there rather than give way to the curve; where a pressure is
     * planned it gives way like the others, so that the calf keeps pressing more.
     */
    private static List<Node> onBody(Order order) {
        Node thigh = node(order, Level.Name.CROTCH, Measure.THIGH_GIRTH);
        boolean stands =
                thigh.firm() || order.holding().at(Level.Name.CROTCH).wanted().isEmpty();
        return List.of(
                new Node(thigh.height(), thigh.width(), thigh.level(), stands),
                node(order, Level.Name.MID_THIGH, Measure.MID_THIGH_GIRTH),
                node(order, Level.Name.KNEE, Measure.KNEE_GIRTH),
                node(order, Level.Name.CALF, Measure.CALF_GIRTH));
    }

    private static LegLine onLeg(Order order, List<Node> onBody) {
        Style style = order.style();
        double hem = HemHeights.of(order).value() * (1 - order.reductions().along());
        double width = HemLine.of(order).across(HemWidths.plain(order).value());
        Node narrow = new Node(hem + style.cuffHeight().orElse(0), width, Level.Name.HEM);
        List<Node> above = style.leg() == Style.Leg.KNEE ? aboveKnee(order, onBody.get(0), narrow) : onBody;
        return assemble(order, above, narrow, Optional.empty(), hem, 0, OptionalDouble.empty());
    }

    /**
     * Of a leg to the knee the mid-thigh may lie anywhere above the hem, and beside it too: in its stead stands the girth
     * profile's halfway between crotch and throat, so that nothing jumps when it passes the throat.
     */
    private static List<Node> aboveKnee(Order order, Node crotch, Node end) {
        double throat = end.height() + turn(List.of(crotch), end.height());
        double height = (crotch.height() + throat) / 2;
        double onBody = height / (1 - order.reductions().along());
        double girth = GirthProfile.of(order.body()).girthAt(onBody);
        return List.of(crotch, new Node(height, girth * (1 - order.holding().reductionAt(onBody)), null));
    }

    private static LegLine overBoot(Order order, Boot boot, List<Node> onBody) {
        Body body = order.body();
        Style style = order.style();
        double flat = 1 - order.reductions().along();
        double hem = HemHeights.of(order).value() * flat;
        double end = hem + style.cuffHeight().orElse(0);
        Node flare =
                new Node(end, HemLine.of(order).across(HemWidths.edge(order).value()), Level.Name.HEM);
        double top = HemHeights.bootTop(body, boot) * flat;
        double ankle = body.mm(Measure.ANKLE_HEIGHT) * flat;
        Node narrow = top >= ankle
                ? new Node(top, HemWidths.atTop(boot, order), Level.Name.BOOT_TOP)
                : new Node(ankle, HemWidths.ankle(order), Level.Name.ANKLE);
        double covered = narrow.height() - hem;
        OptionalDouble bootTop =
                top >= ankle && top > end + SHORTEST_MARK ? OptionalDouble.of(top) : OptionalDouble.empty();
        if (narrow.height() - end < SHORTEST_FLARE) {
            double plain = HemLine.of(order).across(HemWidths.plain(order).value());
            Node last = new Node(end, plain, Level.Name.HEM);
            return assemble(order, onBody, last, Optional.empty(), hem, covered, bootTop);
        }
        return assemble(order, onBody, narrow, Optional.of(flare), hem, covered, bootTop);
    }

    private static Node node(Order order, Level.Name level, Measure girth) {
        Held at = order.holding().at(level);
        double height = at.height() * (1 - order.reductions().along());
        return new Node(height, at.width(), level, order.body().isHard(girth));
    }

    private static LegLine assemble(
            Order order,
            List<Node> body,
            Node narrow,
            Optional<Node> flare,
            double hem,
            double covered,
            OptionalDouble bootTop) {
        boolean boot = flare.isPresent() && narrow.level() == Level.Name.BOOT_TOP;
        double turn = boot ? bootTurn(body, narrow) : turn(body, narrow.height());
        double throat = narrow.height() + turn;
        List<Node> leg = new ArrayList<>(
                body.stream().filter(n -> n.height() > throat + CLOSEST).toList());
        leg.add(new Node(throat, narrow.width(), null));
        double crotch =
                order.body().mm(Measure.CROTCH_HEIGHT) * (1 - order.reductions().along())
                        - order.shift(Shift.CROTCH_LINE);
        double wider = flare.isPresent()
                ? 0
                : HemLine.of(order).across(HemWidths.edge(order).value()) - narrow.width();
        return new LegLine(crotch, leg, narrow, flare, hem, turn, covered, bootTop, wider);
    }

    /** Above a boot: longer than the tongue where a strong calf would turn in so fast that the edge bent with less than 60 mm. */
    private static double bootTurn(List<Node> body, Node narrow) {
        Node calf = body.get(body.size() - 1);
        double room = calf.height() - narrow.height();
        if (room <= 2 * TONGUE) {
            return TONGUE;
        }
        double slope = (calf.width() - narrow.width()) / room;
        return Math.max(TONGUE, Math.min(Math.min(ANKLE_TURN, CALF_SHARE * room), TURN_RADIUS * slope));
    }

    /** A leg's end without a boot's tongue: shorter on a short leg, and where the calf is near. */
    private static double turn(List<Node> body, double end) {
        double room = body.stream()
                .mapToDouble(n -> n.height() - end)
                .filter(h -> h > 2 * CLOSEST)
                .min()
                .orElse(ANKLE_TURN);
        return Math.min(ANKLE_TURN, Math.min(TURN_SHARE * (body.get(0).height() - end), CALF_SHARE * room));
    }

    /** Why the crotch and the lower edge lie where they are drawn. */
    List<Reason> reasons(Order order, Piece drawn) {
        return List.of(
                order.moves()
                        .told(
                                Ruled.of(
                                        drawn.edge(EdgeName.FRONT_INSEAM)
                                                .line()
                                                .start()
                                                .y(),
                                        Tell.said("rule.crotch-height"),
                                        Tell.said("source.leg"),
                                        Inputs.measure(order.body(), Measure.CROTCH_HEIGHT),
                                        order.along()),
                                Shift.CROTCH_LINE)
                        .reason(order.its(What.CROTCH_HEIGHT)),
                Ruled.of(
                                drawn.edge(EdgeName.HEM).line().start().y(),
                                Tell.said("rule.lower-edge-height"),
                                Tell.said("source.hems-heights"),
                                Inputs.length(order.its(What.HEM_HEIGHT), hemHeight),
                                Inputs.style(
                                        Tell.said("input.finished-cuff"),
                                        order.style().cuffHeight().orElse(0)))
                        .reason(order.its(What.LOWER_EDGE_HEIGHT)));
    }

    /** Why the finished edge lies where it lies, and is as long as it is. */
    List<Reason> hemReasons(Order order, Piece drawn) {
        List<Reason> out = new ArrayList<>();
        out.add(HemHeights.of(order).with(Grid.snap(hemHeight)).reason(order.its(What.HEM_HEIGHT)));
        HemLine.drop(order).ifPresent(d -> out.add(d.reason(order.its(What.HEM_DROP))));
        out.add(HemWidths.edge(order).with(drawn.edge(EdgeName.HEM).length()).reason(order.its(What.HEM_LENGTH)));
        return out;
    }
}
