package stretchwright.draft;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.ground.Findings;
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
                findings.add("style.cuff.height", noLeg(line, order), "Choose a lower cuff, or a longer leg.");
                return false;
            }
            findings.add(
                    boot.isPresent() ? "boot.ankle to top" : "wearer.measurements.ankle height",
                    String.format(
                            Locale.ROOT,
                            "the lower end of the leg lies at %.0f mm, above or too near the knee at %.0f mm.",
                            line.narrow().height() / flat,
                            body.mm(Measure.KNEE_HEIGHT)),
                    "Measure the boot's top and the heights again.");
            return false;
        }
        List<Node> all = line.leg();
        for (int i = 1; i < all.size(); i++) {
            double gap = (all.get(i - 1).height() - all.get(i).height()) / flat;
            if (gap < ROOM) {
                findings.add(
                        "wearer.measurements." + word(all.get(i).level()) + " height",
                        String.format(
                                Locale.ROOT,
                                "the %s lies only %.0f mm below the %s.",
                                word(all.get(i).level()),
                                gap,
                                word(all.get(i - 1).level())),
                        "Measure both heights again, from the floor.");
                return false;
            }
        }
        if (boot.isPresent()
                && order.style().cuffHeight().isPresent()
                && line.flare().isEmpty()
                && line.bootCovered() >= LegLine.SHORTEST_FLARE) {
            findings.add(
                    "style.cuff.height",
                    String.format(
                            Locale.ROOT,
                            "a cuff of %.0f mm takes up the %.0f mm between the boot's top and the hem: no leg is left over the"
                                    + " boot.",
                            order.style().cuffHeight().getAsDouble(),
                            line.bootCovered()),
                    "Choose a lower cuff, or set the hem lower.");
            return false;
        }
        double end = line.flare().orElse(line.narrow()).height();
        if (end > all.get(all.size() - 1).height()) {
            Node lowest = all.get(all.size() - 2);
            findings.add(
                    "style.cuff.height",
                    String.format(
                            Locale.ROOT,
                            "a cuff of %.0f mm is too tall for the %.0f mm of leg between the %s and the hem.",
                            order.style().cuffHeight().orElse(0),
                            (lowest.height() - line.hemHeight()) / flat,
                            word(lowest.level())),
                    "Choose a lower cuff, or set the hem lower.");
            return false;
        }
        return true;
    }

    private static String noLeg(LegLine line, Order order) {
        double crotch = order.body().mm(Measure.CROTCH_HEIGHT);
        double hem = line.hemHeight() / (1 - order.reductions().along());
        return String.format(
                Locale.ROOT,
                "a cuff of %.0f mm is at odds with the length of the leg: %.0f mm lie between the crotch and the hem.",
                order.style().cuffHeight().orElse(0),
                crotch - hem);
    }

    private static String word(Level.@org.jspecify.annotations.Nullable Name level) {
        return level == null ? "boot top" : level.word();
    }
}
