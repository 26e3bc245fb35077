package stretchwright.intake;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import stretchwright.boot.Boot;

/** Rows of the boot: a few tape measures on the laced boot. */
public final class BootKeys {
    static final Key<Boolean> BOOT = Row.section(
                    "boot", "{top girth: {290}, heel girth: {400}, hem girth: {385}, ankle to hem: {140}}")
            .needing(Need.when("needed.over-boot"))
            .also("boots", "skate");

    public static final Key<String> KIND =
            Row.name("boot.kind", "figure skate").usually("boot").in(of(b -> Optional.of(b.kind())));

    /** Boots of small children to the bulkiest hinged cuffs (makers' practice; no table of boots was found). */
    public static final Key<Double> TOP_GIRTH = Row.length(
                    "boot.top girth", 120, 700, "why.boot-top", 180, 480, "{290}")
            .needed()
            .also("top")
            .in(of(b -> Optional.of(b.topGirth())));

    public static final Key<Double> HEEL_GIRTH = Row.length(
                    "boot.heel girth", 150, 800, "why.boot-heel", 200, 560, "{400}")
            .needed()
            .also("heel")
            .in(of(b -> Optional.of(b.heelGirth())));

    public static final Key<Double> HEM_GIRTH = Row.length(
                    "boot.hem girth", 120, 800, "why.boot-hem", 180, 560, "{385}")
            .needed()
            .also("hem")
            .in(of(b -> Optional.of(b.hemGirth())));

    /** Ankle bone to the ice is about 75 mm bare (trade values 9.1) and up to 110 mm more with heel and blade. */
    public static final Key<Double> ANKLE_TO_HEM = Row.length(
                    "boot.ankle to hem", 0, 250, "why.ankle-to-hem", 20, 220, "{140}")
            .needed()
            .in(of(b -> Optional.of(b.ankleToHem())));

    public static final Key<Double> ANKLE_TO_TOP = Row.length(
                    "boot.ankle to top", 0, 450, "why.ankle-to-top", 30, 300, "{90}")
            .usually(Boot.USUAL_ANKLE_TO_TOP)
            .in(of(b -> Optional.of(b.ankleToTop())))
            .echoed(Echoed.<Double>as("")
                    .orAssumed(m -> m.boot().map(Boot::topEstimated).orElse(false)));

    public static final Key<Boot.Dressing> DRESSING = Row.choice(
                    "boot.dressing",
                    ChoiceKind.of(List.of(Boot.Dressing.values()), BootKeys::word)
                            .also(Boot.Dressing.LEG_FIRST, "leggings first", "before the boot")
                            .also(Boot.Dressing.OVER_LACED_BOOT, "over the boot", "over laced boot", "boot first on"),
                    "leg first")
            .usually(Boot.Dressing.LEG_FIRST)
            .in(of(b -> Optional.of(b.dressing())));

    /** Round heel, blade guard or wheels and instep: blade and guard add up to some 100 mm each way (common practice). */
    public static final Key<Double> GUARD_GIRTH = Row.length(
                    "boot.guard girth", 150, 1000, "why.guard", 250, 800, "{520}")
            .needing(Need.when("needed.over-laced"))
            .in(of(b -> Row.boxed(b.guardGirth())));

    /** The bone stands about 75 mm over the floor bare (trade values 9.1); heel block and sole add up to 80 mm. */
    public static final Key<Double> ANKLE_TO_SOLE = sole(
                    "boot.ankle to sole", 20, 220, "why.ankle-to-sole", 50, 190, "{135}", Boot.Sole::ankleToSole)
            .needing(Need.when("needed.strap-or-cover"));

    /** A foot of 130 to 330 mm and the boot's shell (common practice). */
    public static final Key<Double> SOLE_LENGTH = sole(
                    "boot.sole length", 120, 400, "why.sole-length", 140, 360, "{270}", Boot.Sole::length)
            .needing(Need.when("needed.cover"));

    public static final Key<Double> SOLE_WIDTH = sole(
                    "boot.sole width", 25, 160, "why.sole-width", 40, 140, "{95}", Boot.Sole::width)
            .needing(Need.when("needed.cover"));

    public static final Key<Double> ARCH_WIDTH = sole(
                    "boot.arch width", 25, 160, "why.arch-width", 25, 120, "{60}", Boot.Sole::arch)
            .needing(Need.when("needed.strap"));

    public static final Key<Double> MOUNT_GAP = sole(
                    "boot.gap between mounts", 0, 250, "why.mount-gap", 20, 200, "{70}", Boot.Sole::gap)
            .needing(Need.when("needed.strap"));

    public static final Key<Double> PLATE =
            sole("boot.plate length", 80, 450, "why.plate", 120, 400, "{280}", Boot.Sole::plate);

    private BootKeys() {}

    static List<Key<?>> rows() {
        return List.of(
                BOOT,
                KIND,
                TOP_GIRTH,
                HEEL_GIRTH,
                HEM_GIRTH,
                ANKLE_TO_HEM,
                ANKLE_TO_TOP,
                DRESSING,
                GUARD_GIRTH,
                ANKLE_TO_SOLE,
                SOLE_LENGTH,
                SOLE_WIDTH,
                ARCH_WIDTH,
                MOUNT_GAP,
                PLATE);
    }

    private static <T> Lens<T> of(Function<Boot, Optional<T>> get) {
        return Lens.reading(m -> m.boot().flatMap(get));
    }

    private static Key<Double> sole(
            String path,
            double least,
            double most,
            String why,
            double from,
            double to,
            String example,
            Function<Boot.Sole, OptionalDouble> get) {
        return Row.length(path, least, most, why, from, to, example).in(of(b -> Row.boxed(get.apply(b.sole()))));
    }

    private static String word(Boot.Dressing dressing) {
        return dressing == Boot.Dressing.OVER_LACED_BOOT ? "over the laced boot" : ChoiceKind.lower(dressing);
    }
}
