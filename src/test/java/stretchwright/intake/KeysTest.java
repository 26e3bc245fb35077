package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;

/** The rows of the table of keys, each for itself. */
class KeysTest {
    /** A row, and how its key is written in a file: with the lists it stands in. */
    private record Written(String path, Key<?> key) {
        /** The file with nothing but this key. */
        String file(String value) {
            StringBuilder before = new StringBuilder();
            StringBuilder behind = new StringBuilder();
            for (String step : path.split("\\.")) {
                boolean list = step.endsWith("[]");
                before.append(list ? step.substring(0, step.length() - 2) + ": [{" : step + ": {");
                behind.insert(0, list ? "}]" : "}");
            }
            String open = before.substring(0, before.length() - 1);
            return "{" + open + value + behind.substring(1) + "}";
        }
    }

    private static List<Written> rows() {
        List<Written> all = new ArrayList<>();
        Table.keys().all().forEach(k -> add(all, "", k));
        return all;
    }

    private static void add(List<Written> all, String at, Key<?> key) {
        all.add(new Written(at + key.path(), key));
        key.parts().all().forEach(k -> add(all, at + key.path() + "[].", k));
    }

    private static List<Finding> read(String text, Unit unit) {
        Findings findings = new Findings("a.yaml", unit);
        Tree.Keys tree = YamlTree.read(text, findings).orElseThrow();
        TableReader.file(tree, Table.keys(), findings, Optional.of(unit));
        return findings.all();
    }

    @Test
    void anotherRowStandsBehindThoseOfItsSection() {
        Keys table = Keys.of(List.of(FileKeys.NAME, SeamKeys.rows().get(0), FileKeys.SEED));
        assertThat(table.with(FileKeys.UNIT).all()).extracting(Key::path).last().isEqualTo("unit");
    }

    @Test
    void theTableIsLarge() {
        assertThat(rows()).hasSizeGreaterThan(200);
    }

    /** A finding's example is obeyed: it must be right, in the unit of the file. */
    @ParameterizedTest
    @EnumSource(names = {"MM", "CM", "IN"})
    void everyExampleIsTrueInEveryUnit(Unit unit) {
        for (Written row : rows()) {
            String text = row.file(row.key.example(unit));
            String path = row.path.replace("[]", ".1");
            assertThat(read(text, unit))
                    .as(text)
                    .filteredOn(f -> f.key().equals(path))
                    .isEmpty();
        }
    }

    /** What is told to be allowed at the least and at the most is allowed, in every unit. */
    @ParameterizedTest
    @EnumSource(names = {"MM", "CM", "IN"})
    void whatIsToldToBeAllowedIs(Unit unit) {
        for (Written row : rows()) {
            if (row.key.kind() instanceof LengthKind kind) {
                for (double mm : List.of(-1e7, 1e9)) {
                    String text = row.file(Double.toString(unit.fromMm(mm)));
                    for (Finding f : read(text, unit)) {
                        if (f.right().key().equals("amount.allowed")) {
                            f.right().parts().subList(0, 2).forEach(end -> {
                                String told = Voice.of(unit).say(end).replace("+", "");
                                assertThat(read(row.file(told), unit))
                                        .as("%s: %s", row.path, told)
                                        .noneMatch(g -> g.wrong().key().startsWith("amount."));
                            });
                        }
                    }
                }
                assertThat(kind.range().least()).isLessThan(kind.range().most());
            }
        }
    }

    @Test
    void everyRowHasALabelAndAHelpAndNoneIsLeftOver() {
        ResourceBundle bundle = ResourceBundle.getBundle("stretchwright.intake.words");
        Set<String> wanted = new TreeSet<>();
        for (Written row : rows()) {
            wanted.add(row.key.words() + ".label");
            wanted.add(row.key.words() + ".help");
            assertThat(Voice.plain().say(row.key.label())).as(row.path).isNotBlank();
            assertThat(Voice.plain().say(row.key.help())).as(row.path).isNotBlank();
        }
        Set<String> there = bundle.keySet().stream()
                .filter(k -> k.endsWith(".label") || k.endsWith(".help"))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(there).isEqualTo(wanted);
    }

    /** A word that could mean two keys of one section would be a guess. */
    @Test
    void noWordMeansTwoKeysOfASection() {
        Set<Keys> tables = new LinkedHashSet<>(List.of(Table.keys()));
        rows().stream()
                .map(Written::key)
                .filter(k -> k.kind() instanceof SectionsKind)
                .forEach(k -> tables.add(((SectionsKind) k.kind()).inside()));
        for (Keys table : tables) {
            Set<String> sections =
                    table.all().stream().map(Key::section).collect(Collectors.toCollection(LinkedHashSet::new));
            for (String section : sections) {
                List<String> words = table.inside(section).stream()
                        .flatMap(k -> Stream.concat(Stream.of(k.name()), k.synonyms().stream()))
                        .toList();
                assertThat(words).as(section).doesNotHaveDuplicates();
            }
        }
    }

    @Test
    void usualValuesAreAllowed() {
        rows().forEach(row -> assertThat(isAllowed(row.key)).as(row.path).isTrue());
    }

    private static <T> boolean isAllowed(Key<T> key) {
        Optional<Range> range = key.kind().within();
        return key.usual()
                .map(v -> key.kind().amount(v))
                .filter(a -> a.isPresent() && range.isPresent() && !(key.kind() instanceof ShareKind))
                .map(a -> range.get().holds(a.getAsDouble()))
                .orElse(true);
    }
}
