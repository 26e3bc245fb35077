package stretchwright.intake;

import java.util.Optional;
import stretchwright.boot.Boot;
import stretchwright.ground.Part;

/** The boot from what was given: a few tape measures on the laced boot. */
final class BootReader {
    /** Room for the tape: by how much the "longest loop" may be read shorter than the hem's (trade values 5: 5 mm). */
    private static final double TAPE = 5;

    private BootReader() {}

    static Optional<Boot> read(Given given) {
        Optional<Double> top = given.get(BootKeys.TOP_GIRTH);
        Optional<Double> heel = given.get(BootKeys.HEEL_GIRTH);
        Optional<Double> hem = given.get(BootKeys.HEM_GIRTH);
        Optional<Double> toHem = given.get(BootKeys.ANKLE_TO_HEM);
        if (top.isEmpty() || heel.isEmpty() || hem.isEmpty() || toHem.isEmpty()) {
            return Optional.empty();
        }
        if (!agree(given, heel.get(), hem.get())) {
            return Optional.empty();
        }
        return Optional.of(new Boot(
                given.orUsual(BootKeys.KIND),
                top.get(),
                heel.get(),
                hem.get(),
                toHem.get(),
                given.orUsual(BootKeys.ANKLE_TO_TOP),
                given.get(BootKeys.ANKLE_TO_TOP).isEmpty(),
                given.orUsual(BootKeys.DRESSING),
                Row.unboxed(given.get(BootKeys.GUARD_GIRTH)),
                sole(given)));
    }

    private static Boot.Sole sole(Given given) {
        return new Boot.Sole(
                Row.unboxed(given.get(BootKeys.ANKLE_TO_SOLE)),
                Row.unboxed(given.get(BootKeys.SOLE_LENGTH)),
                Row.unboxed(given.get(BootKeys.SOLE_WIDTH)),
                Row.unboxed(given.get(BootKeys.ARCH_WIDTH)),
                Row.unboxed(given.get(BootKeys.MOUNT_GAP)),
                Row.unboxed(given.get(BootKeys.PLATE)));
    }

    private static boolean agree(Given given, double heel, double hem) {
        int before = given.problems();
        if (hem > heel + TAPE) {
            given.add(
                    BootKeys.HEM_GIRTH,
                    Tell.said("boot.hem-longer", Part.written(hem), Part.written(heel)),
                    Tell.said("boot.exchanged"));
        }
        given.get(BootKeys.GUARD_GIRTH)
                .filter(guard -> guard < heel - TAPE)
                .ifPresent(guard -> given.add(
                        BootKeys.GUARD_GIRTH,
                        Tell.said("boot.guard-shorter", Part.written(guard), Part.written(heel)),
                        Tell.said("boot.guards-on")));
        Optional<Double> length = given.get(BootKeys.SOLE_LENGTH);
        Optional<Double> width = given.get(BootKeys.SOLE_WIDTH);
        if (length.isPresent() && width.orElse(0.0) > length.get() / 2) {
            given.add(
                    BootKeys.SOLE_WIDTH,
                    Tell.said("boot.sole-wide", Part.written(width.orElseThrow()), Part.written(length.get())),
                    Tell.said("boot.sole-exchanged"));
        }
        return given.problems() == before;
    }
}
