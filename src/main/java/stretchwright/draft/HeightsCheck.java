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
    private static final double ROOM = 15;

    private HeightsCheck() {}

    static boolean pass(LegLine line, Body body, Optional<Boot> boot, Findings findings) {
        boolean hasKnee = line.leg().stream().anyMatch(n -> n.level() == Level.Name.KNEE);
        if (!hasKnee) {
            findings.add(
                    boot.isPresent() ? "boot.ankle to top" : "wearer.measurements.ankle height",
                    String.format(
                            Locale.ROOT,
                            "the lower end of the leg lies at %.0f mm, above or too near the knee at %.0f mm.",
                            line.narrow().height(),
                            body.mm(Measure.KNEE_HEIGHT)),
                    "Measure the boot's top and the heights again.");
            return false;
        }
        List<Node> all = line.leg();
        for (int i = 1; i < all.size(); i++) {
            double gap = all.get(i - 1).height() - all.get(i).height();
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
        double end = line.flare().orElse(line.narrow()).height();
        if (end > all.get(all.size() - 1).height()) {
            findings.add(
                    "style.cuff.height",
                    "the cuff is taller than the part of the leg below the calf.",
                    "Choose a lower cuff.");
            return false;
        }
        return true;
    }

    private static String word(Level.@org.jspecify.annotations.Nullable Name level) {
        return level == null ? "boot top" : level.word();
    }
}
