package stretchwright.make;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.boot.Boot;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Style;

/** Reads how the leg ends below: cuff or hem. */
final class LowerReader {
    private LowerReader() {}

    static LowerEnd read(Section style, Style.Leg leg, Optional<Boot> boot) {
        return new LowerEnd(LowerEnd.Hem.OVER_LACES, cuff(style, leg, boot), OptionalDouble.empty());
    }

    private static OptionalDouble cuff(Section s, Style.Leg leg, Optional<Boot> boot) {
        Optional<Section> section = s.section("cuff", List.of("height"));
        section.ifPresent(c -> c.require("height", "3.2"));
        OptionalDouble height =
                section.map(c -> c.length("height", Limits.CUFF_HEIGHT)).orElse(OptionalDouble.empty());
        if (height.isPresent() && leg == Style.Leg.OVER_BOOT && boot.isPresent()) {
            double covered = boot.get().ankleToTop() + boot.get().ankleToHem();
            if (height.getAsDouble() > covered) {
                section.orElseThrow()
                        .add(
                                "height",
                                "is " + s.shownLength(height.getAsDouble())
                                        + ", more than the part of the boot that the leg covers ("
                                        + s.shownLength(covered) + ").",
                                "Make the cuff lower, or let the leg reach further down (boot.ankle to hem).");
            }
        }
        return height;
    }
}
