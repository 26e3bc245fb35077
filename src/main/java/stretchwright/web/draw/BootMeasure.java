package stretchwright.web.draw;

import java.util.Arrays;
import java.util.Optional;
import stretchwright.ground.Said;

/** What is measured on a laced boot, by the keys of the make file. */
public enum BootMeasure {
    TOP_GIRTH("boot.top girth", Tell.said("boot.top-girth"), Tell.said("boot.top-girth.drawn")),
    HEEL_GIRTH("boot.heel girth", Tell.said("boot.heel-girth"), Tell.said("boot.heel-girth.drawn")),
    HEM_GIRTH("boot.hem girth", Tell.said("boot.hem-girth"), Tell.said("boot.hem-girth.drawn")),
    ANKLE_TO_HEM("boot.ankle to hem", Tell.said("boot.ankle-to-hem"), Tell.said("boot.ankle-to-hem.drawn")),
    ANKLE_TO_TOP("boot.ankle to top", Tell.said("boot.ankle-to-top"), Tell.said("boot.ankle-to-top.drawn")),
    GUARD_GIRTH("boot.guard girth", Tell.said("boot.guard-girth"), Tell.said("boot.guard-girth.drawn")),
    ANKLE_TO_SOLE("boot.ankle to sole", Tell.said("boot.ankle-to-sole"), Tell.said("boot.ankle-to-sole.drawn")),
    SOLE_LENGTH("boot.sole length", Tell.said("boot.sole-length"), Tell.said("boot.sole-length.drawn")),
    SOLE_WIDTH("boot.sole width", Tell.said("boot.sole-width"), Tell.said("boot.sole-width.drawn")),
    ARCH_WIDTH("boot.arch width", Tell.said("boot.arch-width"), Tell.said("boot.arch-width.drawn")),
    MOUNT_GAP("boot.gap between mounts", Tell.said("boot.mount-gap"), Tell.said("boot.mount-gap.drawn")),
    PLATE("boot.plate length", Tell.said("boot.plate"), Tell.said("boot.plate.drawn"));

    private final String path;
    private final Said title;
    private final Said drawn;

    BootMeasure(String path, Said title, Said drawn) {
        this.path = path;
        this.title = title;
        this.drawn = drawn;
    }

    /** The key of the make file. */
    public String path() {
        return path;
    }

    Said title() {
        return title;
    }

    Said drawn() {
        return drawn;
    }

    /** Whether it is seen from below. */
    boolean fromBelow() {
        return this == SOLE_WIDTH || this == ARCH_WIDTH;
    }

    public static Optional<BootMeasure> of(String path) {
        return Arrays.stream(values()).filter(m -> m.path.equals(path)).findFirst();
    }
}
