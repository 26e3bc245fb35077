package stretchwright.make;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.boot.Boot;

/** Reads the boot: a few tape measures on the laced boot. */
final class BootReader {
    static final List<String> KEYS =
            List.of("kind", "top girth", "heel girth", "hem girth", "ankle to hem", "ankle to top", "dressing");

    /** Room for the tape: by how much the "longest loop" may be read shorter than the hem's (trade values 5: 5 mm). */
    private static final double TAPE = 5;

    private BootReader() {}

    static Optional<Boot> read(Section section) {
        section.require("top girth", "29.0");
        section.require("heel girth", "40.0");
        section.require("hem girth", "38.5");
        section.require("ankle to hem", "14.0");
        String kind = section.name("kind").orElse("boot");
        OptionalDouble top = section.length("top girth", Limits.BOOT_TOP);
        OptionalDouble heel = section.length("heel girth", Limits.BOOT_HEEL);
        OptionalDouble hem = section.length("hem girth", Limits.BOOT_HEM);
        OptionalDouble toHem = section.length("ankle to hem", Limits.ANKLE_TO_HEM);
        OptionalDouble toTop = section.length("ankle to top", Limits.ANKLE_TO_TOP);
        Boot.Dressing dressing = section.choice("dressing", List.of(Boot.Dressing.values()), BootReader::word)
                .orElse(Boot.Dressing.LEG_FIRST);
        if (top.isEmpty() || heel.isEmpty() || hem.isEmpty() || toHem.isEmpty()) {
            return Optional.empty();
        }
        if (hem.getAsDouble() > heel.getAsDouble() + TAPE) {
            section.add(
                    "hem girth",
                    "is " + section.shownLength(hem.getAsDouble()) + ", longer than the heel girth of "
                            + section.shownLength(heel.getAsDouble()) + ", which is to be the longest loop.",
                    "Measure both again, boots laced; are they exchanged?");
            return Optional.empty();
        }
        return Optional.of(new Boot(
                kind,
                top.getAsDouble(),
                heel.getAsDouble(),
                hem.getAsDouble(),
                toHem.getAsDouble(),
                toTop.orElse(Boot.USUAL_ANKLE_TO_TOP),
                toTop.isEmpty(),
                dressing));
    }

    /** As written in the make file. */
    static String word(Boot.Dressing dressing) {
        return dressing.name().toLowerCase(Locale.ROOT).replace('_', ' ').replace("over laced", "over the laced");
    }
}
