package stretchwright.draft;

import java.util.Optional;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.pattern.Moved;
import stretchwright.pattern.Shift;

/** Whether what was moved by hand and for the figure leaves a leg that can be drawn; names what went too far. */
final class MovesCheck {
    /** The crotch line stays at least so far above the seat fold, mm: nearer, the inseam turns on the spot (no source). */
    private static final double LEAST_TO_FOLD = 4;

    /** A crotch point keeps at least this share of its extension, or there is no room for the bend (no source). */
    private static final double LEAST_EXTENSION_LEFT = 0.4;

    /** Smallest radius of a lower edge moved at the side, mm, and as a part of it what can be turned up (no source). */
    private static final double LEAST_RADIUS = 40;

    /** What a maker moves may bend the crotch seam to this share of its least radius (no source). */
    private static final double LEAST_OF_RADIUS = 0.8;

    /** A leg keeps at least this share of its width at a level, or its edges meet (no source). */
    private static final double LEAST_WIDTH_LEFT = 0.6;

    private MovesCheck() {}

    /** Each place by itself: makers' bounds, all that moves it together. */
    static boolean pass(Order order, Findings findings) {
        int before = findings.all().size();
        for (Shift shift : Shift.values()) {
            double own = shift == Shift.FRONT_WAIST
                    ? order.style().top().frontRaise()
                    : shift == Shift.BACK_WAIST ? order.style().top().backRaise() : 0;
            double mm = order.shift(shift) + own;
            if (mm < shift.least() || mm > shift.most()) {
                findings.add(
                        key(order, shift),
                        Tell.said("moves.together", shift.said(), shift.way().of(mm), Part.length(Math.abs(mm))),
                        Tell.said("moves.together-help", Part.signed(shift.least()), Part.signed(shift.most())));
            }
        }
        return findings.all().size() == before && lowerEdge(order, findings);
    }

    private static boolean lowerEdge(Order order, Findings findings) {
        if (order.shift(Shift.SIDE_HEM) == 0) {
            return true;
        }
        HemLine line = HemLine.of(order);
        double edge = HemWidths.edge(order).value();
        double radius = line.sharpest(line.across(edge));
        boolean turned = order.style().cuffHeight().isEmpty() && !Cover.wanted(order.style());
        double turn = turned ? order.style().hemAllowance() : 0;
        if (radius >= LEAST_RADIUS && turn <= radius * LowerCheck.TURN_OF_RADIUS) {
            return true;
        }
        findings.add(
                key(order, Shift.SIDE_HEM),
                Tell.said(
                        "moves.side-hem",
                        Part.signed(order.shift(Shift.SIDE_HEM)),
                        Part.length(edge),
                        Part.length(radius),
                        Part.length(turn)),
                Tell.said("moves.side-hem-help"));
        return false;
    }

    /** The leg as it comes out. */
    static boolean pass(Order order, Frame frame, LegLine line, LegCurves curves, Findings findings) {
        int before = findings.all().size();
        levels(order, line, curves, findings);
        double fold = line.crotch() - line.leg().get(0).height();
        if (order.shift(Shift.CROTCH_LINE) > 0 && fold < LEAST_TO_FOLD) {
            findings.add(
                    key(order, Shift.CROTCH_LINE),
                    Tell.said("moves.crotch-line", Part.signed(order.shift(Shift.CROTCH_LINE)), Part.length(fold)),
                    Tell.said("moves.less-help"));
        }
        double extension = Math.max(curves.grown(), frame.leastCrotch()) - frame.hip();
        point(order, Shift.FRONT_CROTCH_POINT, Shift.FRONT_HIP, Frame.FRONT_EXTENSION_SHARE * extension, findings);
        point(order, Shift.BACK_CROTCH_POINT, Shift.BACK_HIP, (1 - Frame.FRONT_EXTENSION_SHARE) * extension, findings);
        return findings.all().size() == before;
    }

    private static void levels(Order order, LegLine line, LegCurves curves, Findings findings) {
        for (Shift shift : order.style().shifts().by().keySet()) {
            shift.level().ifPresent(level -> {
                Optional<Node> node =
                        line.leg().stream().filter(n -> n.level() == level).findFirst();
                if (node.isEmpty()) {
                    findings.add(
                            key(order, shift),
                            Tell.said("moves.no-level", level.said()),
                            Tell.said("moves.no-level-help"));
                } else if (node.get().width() + curves.moved(level)
                        < LEAST_WIDTH_LEFT * node.get().width()) {
                    findings.add(
                            key(order, shift),
                            Tell.said(
                                    "moves.narrow",
                                    Part.length(node.get().width() + curves.moved(level)),
                                    Part.length(node.get().width()),
                                    level.said()),
                            Tell.said("moves.less-help"));
                }
            });
        }
    }

    private static void point(Order order, Shift shift, Shift hip, double extension, Findings findings) {
        if (order.shift(shift) - order.shift(hip) < (LEAST_EXTENSION_LEFT - 1) * extension) {
            findings.add(
                    key(order, Math.abs(order.shift(hip)) > Math.abs(order.shift(shift)) ? hip : shift),
                    Tell.said(
                            "moves.crotch-point",
                            shift.said(),
                            Part.signed(order.shift(shift) - order.shift(hip)),
                            Part.length(extension)),
                    Tell.said("moves.less-help"));
        }
    }

    /** Where what was moved leaves a crotch seam that turns on the spot: then it is told. */
    static boolean tooTight(Order order, RiseTrial trial, Findings findings) {
        return trial.tightest() < LEAST_OF_RADIUS * Rise.radius(order.body()) && blamed(order, findings);
    }

    /** Where a leg could not be drawn: whether what was moved is the likelier reason than the measures; then it is told. */
    static boolean blamed(Order order, Findings findings) {
        Optional<Shift> most = order.moves().shifts().by().entrySet().stream()
                .max(java.util.Comparator.comparingDouble(e -> Math.abs(e.getValue())))
                .map(java.util.Map.Entry::getKey);
        most.ifPresent(shift -> findings.add(
                key(order, shift),
                Tell.said("moves.not-closed", shift.said(), Part.signed(order.shift(shift))),
                Tell.said("moves.less-help")));
        return most.isPresent();
    }

    /** Where what moves a point stands in the make file: the maker's own hand first. */
    static String key(Order order, Shift shift) {
        boolean centre = shift == Shift.FRONT_WAIST || shift == Shift.BACK_WAIST;
        if (order.style().shifts().at(shift) != 0) {
            return "style.shifts." + shift.word();
        }
        return order.moves().moved().stream()
                .filter(m -> m.shifts().at(shift) != 0)
                .map(Moved::word)
                .findFirst()
                .map(word -> "wearer.figure shifts." + word)
                .orElse(centre ? "style." + shift.word() : "style.shifts");
    }
}
