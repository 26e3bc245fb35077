package stretchwright.draft;

import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.pattern.Level;

/** Whether the levels of the leg leave each other room; says which two are at odds where they do not. */
final class HeightsCheck {
    /** Levels nearer than this, mm, were measured wrongly: no two of them lie so close on a leg (docs/maths/draft.md). */
    private static final double ROOM = 15;

    private HeightsCheck() {}

    static boolean pass(LegLine line, Order order, Findings findings) {
        Body body = order.body();
        Optional<Boot> boot = order.boot();
        double flat = 1 - order.reductions().along();
        boolean pastKnee = boot.isPresent() || line.hemHeight() / flat < body.mm(Measure.CALF_HEIGHT);
        boolean hasKnee = line.leg().stream().anyMatch(n -> n.level() == Level.Name.KNEE);
        if (line.leg().size() < 2 || (pastKnee && !hasKnee)) {
            if (boot.isEmpty() && order.style().cuffHeight().isPresent()) {
                findings.add(
                        "style.cuff.height",
                        Tell.said(
                                "cuff.no-leg",
                                Part.length(order.style().cuffHeight().getAsDouble()),
                                Part.length(body.mm(Measure.CROTCH_HEIGHT) - line.hemHeight() / flat)),
                        Tell.said("cuff.no-leg-help"));
                return false;
            }
            findings.add(
                    boot.isPresent() ? "boot.ankle to top" : "wearer.measurements.ankle height",
                    Tell.said(
                            "heights.end-at-knee",
                            Part.length(line.narrow().height() / flat),
                            Part.length(body.mm(Measure.KNEE_HEIGHT))),
                    Tell.said("heights.end-at-knee-help"));
            return false;
        }
        List<Node> all = line.leg();
        for (int i = 1; i < all.size(); i++) {
            double gap = (all.get(i - 1).height() - all.get(i).height()) / flat;
            if (gap < ROOM) {
                findings.add(
                        "wearer.measurements." + level(all.get(i)).word() + " height",
                        Tell.said(
                                "heights.close",
                                level(all.get(i)).said(),
                                Part.length(gap),
                                level(all.get(i - 1)).said()),
                        Tell.said("heights.close-help"));
                return false;
            }
        }
        if (boot.isPresent()
                && order.style().cuffHeight().isPresent()
                && line.flare().isEmpty()
                && line.bootCovered() >= LegLine.SHORTEST_FLARE) {
            findings.add(
                    "style.cuff.height",
                    Tell.said(
                            "cuff.takes-boot",
                            Part.length(order.style().cuffHeight().getAsDouble()),
                            Part.length(line.bootCovered())),
                    Tell.said("cuff.lower-help"));
            return false;
        }
        double end = line.flare().orElse(line.narrow()).height();
        if (end > all.get(all.size() - 1).height()) {
            Node lowest = all.get(all.size() - 2);
            findings.add(
                    "style.cuff.height",
                    Tell.said(
                            "cuff.too-tall",
                            Part.length(order.style().cuffHeight().orElse(0)),
                            Part.length((lowest.height() - line.hemHeight()) / flat),
                            level(lowest).said()),
                    Tell.said("cuff.lower-help"));
            return false;
        }
        return true;
    }

    private static Level.Name level(Node node) {
        return node.level() == null ? Level.Name.BOOT_TOP : node.level();
    }
}
