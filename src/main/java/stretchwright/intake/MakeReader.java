package stretchwright.intake;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stretchwright.body.Measured;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Unit;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Style;
import stretchwright.sewing.SewingTerms;

/** Reads a whole make file section by section; everything that is wrong becomes a finding, nothing is guessed. */
public final class MakeReader {
    private static final List<String> KEYS = List.of(
            "stretchwright",
            "name",
            "unit",
            "wearer",
            "fabric",
            "boot",
            "style",
            "machines",
            SewingReader.SECTION,
            PrintReader.SECTION,
            "seed",
            WearingReader.SECTION);
    private static final List<Unit> UNITS = List.of(Unit.MM, Unit.CM, Unit.IN);

    private final Findings findings;
    private final Section top;
    private final Optional<Unit> unit;

    private MakeReader(Tree.Keys keys, Findings findings) {
        this.findings = findings;
        Section plain = new Section(keys, "", new Findings(""), Optional.empty(), KEYS);
        this.unit = plain.choice("unit", UNITS, Unit::symbol);
        this.top = new Section(keys, "", findings, unit, KEYS);
    }

    /** The make, or at least one finding. */
    public static Optional<MakeFile> read(String file, Tree.Keys keys, Findings findings) {
        return new MakeReader(keys, findings).read(file);
    }

    /** The wearer alone: of the file only the unit and that section are needed, the others are not looked at. */
    public static Optional<WearerFile> wearer(Tree.Keys keys, Findings findings) {
        MakeReader reader = new MakeReader(keys, findings);
        if (reader.top.has("stretchwright")) {
            reader.version();
        }
        reader.top.require("unit", "cm");
        reader.top.require("wearer", "{figure: woman, measurements: {hip girth: 96.1}}");
        reader.top.choice("unit", UNITS, Unit::symbol);
        Optional<WearerReader.Wearer> wearer =
                reader.top.section("wearer", WearerReader.KEYS).flatMap(WearerReader::taken);
        return findings.isEmpty()
                ? wearer.map(w -> new WearerFile(w.name(), reader.unit.orElseThrow(), w.measured()))
                : Optional.empty();
    }

    /** What the body command needs of a file. */
    public record WearerFile(String name, Unit unit, Measured measured) {}

    private Optional<MakeFile> read(String file) {
        version();
        top.require("name", "Evening practice");
        top.require("unit", "cm");
        top.require("wearer", "{figure: woman, measurements: {hip girth: 96.1}}");
        top.require("fabric", "{usable width: 147 cm, stretch across: 60 %, stretch along: 45 %}");
        Optional<String> name = top.name("name");
        top.choice("unit", UNITS, Unit::symbol);
        Optional<WearerReader.Wearer> wearer =
                top.section("wearer", WearerReader.KEYS).flatMap(s -> WearerReader.read(s, findings));
        Optional<Section> cloth = top.section("fabric", FabricReader.KEYS);
        Optional<Fabric> fabric = cloth.flatMap(s -> FabricReader.read(s, wearer.map(WearerReader.Wearer::measured)));
        List<Contrast> contrasts =
                cloth.map(s -> ContrastReader.read(s, fabric)).orElse(List.of());
        Optional<Boot> boot = top.section("boot", BootReader.KEYS).flatMap(BootReader::read);
        Set<Machine> machines = machines();
        Optional<Style> style = new StyleReader(top, wearer, boot, machines).read();
        SewingTerms sewing = SewingReader.read(top, cloth, machines);
        PrintTerms print = PrintReader.read(top);
        long seed = seed();
        List<WearingEntry> worn = WearingReader.read(top);
        if (!findings.isEmpty()) {
            return Optional.empty();
        }
        WearerReader.Wearer w = wearer.orElseThrow();
        MakeFile plain = new MakeFile(
                file,
                name.orElseThrow(),
                unit.orElseThrow(),
                w.name(),
                w.measured(),
                fabric.orElseThrow(),
                contrasts,
                boot,
                style.orElseThrow(),
                sewing,
                print,
                seed,
                List.of());
        Findings about = new Findings(file);
        Optional<MakeFile> changed = WearingApplied.on(plain, worn, about);
        OwnUnit.findings(about.all(), plain.unit()).forEach(f -> findings.add(f.key(), f.problem(), f.remedy()));
        return changed;
    }

    private void version() {
        top.require("stretchwright", "1");
        Optional<String> version = top.text("stretchwright");
        if (version.isEmpty() || version.get().equals(Integer.toString(MakeFile.VERSION))) {
            return;
        }
        boolean newer = version.get().matches("[0-9]{1,9}") && Integer.parseInt(version.get()) > MakeFile.VERSION;
        top.add(
                "stretchwright",
                newer
                        ? "the file is of format " + version.get() + "; this program reads format 1."
                        : Echo.quoted(version.get()) + " is not a version of the format.",
                newer ? "Use a newer Stretchwright, or write the file in format 1." : "Write: stretchwright: 1");
    }

    /** One household machine where nothing is said: straight and zigzag stitch (common practice, no source). */
    private Set<Machine> machines() {
        Set<Machine> owned = new LinkedHashSet<>();
        Optional<Tree.Items> items = top.items("machines", "[overlocker, coverstitch]");
        for (Tree item : items.map(Tree.Items::items).orElse(List.of())) {
            String word = item instanceof Tree.Text text ? text.text().strip() : item.kind();
            Optional<Machine> machine = Machine.of(word);
            if (machine.isEmpty()) {
                top.add("machines", Echo.quoted(word) + " is not a machine that is known here.", known(word));
            } else if (!owned.add(machine.get())) {
                top.add("machines", Echo.quoted(word) + " is listed twice.", "List each kind once.");
            }
        }
        if (owned.isEmpty()) {
            owned.add(items.isPresent() ? Machine.HAND : Machine.LOCKSTITCH);
        }
        return owned;
    }

    private static String known(String word) {
        List<String> words = Stream.of(Machine.values()).map(Machine::word).toList();
        return Nearest.to(word, words)
                .map(n -> "Is \"" + n + "\" meant?")
                .orElse("Known are: " + String.join(", ", words) + ".");
    }

    private long seed() {
        Optional<String> seed = top.text("seed");
        if (seed.isEmpty()) {
            return 1;
        }
        try {
            return Long.parseLong(seed.get());
        } catch (NumberFormatException e) {
            top.add("seed", Echo.quoted(seed.get()) + " is not a whole number.", "Write for example: seed: 1");
            return 1;
        }
    }
}
