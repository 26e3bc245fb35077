package stretchwright.intake;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import stretchwright.ground.Unit;
import stretchwright.pattern.Machine;

/** Rows of the file itself. */
public final class FileKeys {
    private static final String FORMAT = Integer.toString(MakeFile.VERSION);

    static final Key<String> VERSION = Key.of(
                    "stretchwright",
                    new KnownKind(FORMAT::equals, "version.is-not", "version.write", List.of(), version()),
                    FORMAT)
            .needed()
            .untold();

    public static final Key<String> NAME = Row.name("name", "Evening practice")
            .needed()
            .in(Lens.reading(m -> Optional.of(m.name())))
            .untold();

    private static final ChoiceKind<Unit> UNITS = ChoiceKind.of(List.of(Unit.MM, Unit.CM, Unit.IN), Unit::symbol)
            .also(Unit.MM, "millimetres", "millimeters")
            .also(Unit.CM, "centimetres", "centimeters")
            .also(Unit.IN, "inch", "inches");

    public static final Key<Unit> UNIT = Row.choice("unit", UNITS, "cm")
            .needed()
            .also("units")
            .in(Lens.reading(m -> Optional.of(m.unit())))
            .untold();

    /** One household machine where nothing is said: straight and zigzag stitch (common practice, no source). */
    public static final Key<Set<Machine>> MACHINES = Key.of(
                    "machines",
                    new WordsKind<>(ChoiceKind.of(List.of(Machine.values()), Machine::word)
                            .also(Machine.OVERLOCKER, "serger", "overlock", "overlock machine")
                            .also(Machine.COVERSTITCH, "cover stitch", "coverstitcher", "coverlock")
                            .also(Machine.COMBINED, "combined", "combination machine")
                            .also(
                                    Machine.LOCKSTITCH,
                                    "home machine",
                                    "sewing machine",
                                    "domestic machine",
                                    "household machine")
                            .also(Machine.HAND, "by hand", "hand sewing")),
                    "[overlocker, coverstitch]")
            .usually(Set.of(Machine.LOCKSTITCH))
            .also("machine")
            .in(Lens.of(m -> Optional.of(m.machines()), MakeFile::with))
            .untold();

    public static final Key<Long> SEED = Key.of("seed", new WholeKind(Optional.empty()), "1")
            .usually(1L)
            .in(Lens.reading(m -> Optional.of(m.seed())))
            .untold();

    private FileKeys() {}

    /** The name of the key that tells the format. */
    public static String versionKey() {
        return VERSION.name();
    }

    /** The unit that a word means; empty where it means none. */
    public static Optional<Unit> unit(String word) {
        return UNITS.find(word);
    }

    private static tools.jackson.databind.node.ObjectNode version() {
        return Schemas.either(
                Schemas.node().put("const", MakeFile.VERSION), Schemas.node().put("const", FORMAT));
    }
}
