package stretchwright.intake;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stretchwright.body.Measured;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Unit;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Style;
import stretchwright.sewing.SewingTerms;

/**
 * Reads a whole make file by the table of keys, then builds what the stages need; everything that is wrong becomes a finding,
 * nothing is guessed.
 */
public final class MakeReader {
    private MakeReader() {}

    /** The make, or at least one finding. */
    public static Optional<MakeFile> read(String file, Tree.Keys keys, Findings findings) {
        return read(file, keys, Table.keys(), findings);
    }

    static Optional<MakeFile> read(String file, Tree.Keys keys, Keys table, Findings findings) {
        Optional<Unit> unit = unit(keys);
        Findings own = findings.in(unit.orElse(Unit.MM));
        Optional<MakeFile> make =
                isNewer(keys, own) ? Optional.empty() : make(file, TableReader.file(keys, table, own, unit), table);
        findings.addAll(own.all());
        return make.filter(m -> findings.isEmpty());
    }

    /** What the body command needs of a file. */
    public record WearerFile(String name, Unit unit, Measured measured) {}

    /** The wearer alone: of the file only the unit and that section are needed, the others are not looked at. */
    public static Optional<WearerFile> wearer(Tree.Keys keys, Findings findings) {
        Optional<Unit> unit = unit(keys);
        Findings own = findings.in(unit.orElse(Unit.MM));
        Optional<WearerReader.Wearer> wearer = Optional.empty();
        if (!isNewer(keys, own)) {
            Tree.Keys looked = only(keys);
            wearer = WearerReader.taken(TableReader.file(looked, wearerTable(looked), own, unit));
        }
        findings.addAll(own.all());
        return findings.isEmpty()
                ? wearer.map(w -> new WearerFile(w.name(), unit.orElseThrow(), w.measured()))
                : Optional.empty();
    }

    private static Tree.Keys only(Tree.Keys keys) {
        Map<String, Tree> some = new LinkedHashMap<>(keys.entries());
        some.keySet()
                .retainAll(keys.names().stream()
                        .filter(name -> List.<Key<?>>of(FileKeys.VERSION, FileKeys.UNIT, WearerKeys.WEARER).stream()
                                .anyMatch(k -> k.isCalled(name)))
                        .toList());
        return new Tree.Keys(some, keys.line());
    }

    /** The rows of the wearer; the version is looked at where it is there. */
    private static Keys wearerTable(Tree.Keys keys) {
        List<Key<?>> rows = new java.util.ArrayList<>(WearerKeys.rows());
        rows.add(FileKeys.UNIT);
        if (keys.names().contains(FileKeys.VERSION.name())) {
            rows.add(FileKeys.VERSION);
        }
        return Keys.of(rows);
    }

    /** Looked at before all else, for everything is told in it; what is wrong with it is found by the reader of the table. */
    private static Optional<Unit> unit(Tree.Keys keys) {
        Keys unit = Keys.of(List.of(FileKeys.UNIT));
        return TableReader.file(keys, unit, new Findings(""), Optional.empty()).get(FileKeys.UNIT);
    }

    /** A file of a newer format is one finding, not one for each key that is not known here yet. */
    private static boolean isNewer(Tree.Keys keys, Findings findings) {
        if (!(keys.entries().get(FileKeys.VERSION.name()) instanceof Tree.Text version)) {
            return false;
        }
        String text = version.text().strip();
        if (!text.matches("[0-9]{1,9}") || Integer.parseInt(text) <= MakeFile.VERSION) {
            return false;
        }
        findings.at(
                FileKeys.VERSION.path(),
                version.line(),
                Tell.said("version.newer", Part.text(text), Part.count(MakeFile.VERSION)),
                Tell.said("version.use", Part.count(MakeFile.VERSION)));
        return true;
    }

    private static Optional<MakeFile> make(String file, Given given, Keys table) {
        Optional<WearerReader.Wearer> wearer = WearerReader.read(given);
        Optional<Fabric> fabric = FabricReader.read(given, wearer.map(WearerReader.Wearer::measured));
        List<Contrast> contrasts = ContrastReader.read(given, fabric);
        Optional<Boot> boot = BootReader.read(given);
        Set<Machine> machines = machines(given);
        Style style = new StyleReader(given, wearer, boot, machines).read();
        SewingTerms sewing = SewingReader.read(given, machines);
        PrintTerms print = PrintReader.read(given);
        List<WearingEntry> worn = WearingReader.read(given, table);
        if (!given.findings().isEmpty()) {
            return Optional.empty();
        }
        WearerReader.Wearer w = wearer.orElseThrow();
        MakeFile plain = new MakeFile(
                file,
                given.get(FileKeys.NAME).orElseThrow(),
                given.unit().orElseThrow(),
                w.name(),
                w.measured(),
                fabric.orElseThrow(),
                contrasts,
                boot,
                style,
                sewing,
                print,
                given.orUsual(FileKeys.SEED),
                List.of(),
                given.answers());
        return WearingApplied.on(plain, worn, table, given.findings());
    }

    /** No machine in the list is by hand. */
    private static Set<Machine> machines(Given given) {
        Set<Machine> owned = given.orUsual(FileKeys.MACHINES);
        return owned.isEmpty() ? Set.of(Machine.HAND) : owned;
    }
}
