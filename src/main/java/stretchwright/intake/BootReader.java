package stretchwright.intake;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.boot.Boot;

/** Reads the boot: a few tape measures on the laced boot. */
public final class BootReader {
    static final List<String> KEYS = List.of(
            "kind",
            "top girth",
            "heel girth",
            "hem girth",
            "ankle to hem",
            "ankle to top",
            "dressing",
            "guard girth",
            "ankle to sole",
            "sole length",
            "sole width",
            "arch width",
            "gap between mounts",
            "plate length");

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
        OptionalDouble guard = section.length("guard girth", Limits.BOOT_GUARD);
        Boot.Sole sole = new Boot.Sole(
                section.length("ankle to sole", Limits.ANKLE_TO_SOLE),
                section.length("sole length", Limits.SOLE_LENGTH),
                section.length("sole width", Limits.SOLE_WIDTH),
                section.length("arch width", Limits.SOLE_WIDTH),
                section.length("gap between mounts", Limits.MOUNT_GAP),
                section.length("plate length", Limits.PLATE));
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
        if (!agree(section, heel.getAsDouble(), guard, sole)) {
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
                dressing,
                guard,
                sole));
    }

    private static boolean agree(Section section, double heel, OptionalDouble guard, Boot.Sole sole) {
        if (guard.isPresent() && guard.getAsDouble() < heel - TAPE) {
            section.add(
                    "guard girth",
                    "is " + section.shownLength(guard.getAsDouble()) + ", shorter than the heel girth of "
                            + section.shownLength(heel) + ", though it goes round guard or wheels as well.",
                    "Measure both again, boots laced and guards on.");
            return false;
        }
        if (sole.length().isPresent() && sole.width().orElse(0) > sole.length().getAsDouble() / 2) {
            section.add(
                    "sole width",
                    "is " + section.shownLength(sole.width().getAsDouble()) + ", more than half the sole length of "
                            + section.shownLength(sole.length().getAsDouble()) + ".",
                    "Measure both again; are they exchanged?");
            return false;
        }
        return true;
    }

    /** As written in the make file. */
    public static String word(Boot.Dressing dressing) {
        return dressing.name().toLowerCase(Locale.ROOT).replace('_', ' ').replace("over laced", "over the laced");
    }
}
