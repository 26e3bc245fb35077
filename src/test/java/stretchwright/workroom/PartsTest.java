package stretchwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.intake.MakeFile;
import stretchwright.make.Make;
import stretchwright.workroom.store.Kind;

/** A make cut into its things and put together again means the same, whatever its unit. */
class PartsTest {
    static Stream<String> examples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("examples"))) {
            return files
                    .map(f -> f.getFileName().toString())
                    .filter(n -> n.endsWith(".yaml"))
                    .map(n -> n.substring(0, n.length() - 5))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    private static MakeFile read(String text) {
        return Make.read("a.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    private static Map<Kind, String> parts(String text) {
        Map<Kind, String> parts = new EnumMap<>(Kind.class);
        Parts.KINDS.forEach(k -> Parts.of(Parts.tree(text), k).ifPresent(p -> parts.put(k, p)));
        return parts;
    }

    @ParameterizedTest
    @MethodSource("examples")
    void putTogetherAgainItMeansTheSame(String example) {
        String text = new String(Rooms.example(example), StandardCharsets.UTF_8);
        MakeFile make = read(text);
        MakeFile again = read(Parts.with(text, make.name(), parts(text)));
        assertThat(again).isEqualTo(make);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyLengthOfAPartCarriesItsUnit(String example) {
        String text = new String(Rooms.example(example), StandardCharsets.UTF_8);
        MakeFile make = read(text);
        Map<Kind, String> parts = parts(text);
        String other =
                text.replaceFirst("(?m)^unit: *\\w+", make.unit().symbol().equals("in") ? "unit: cm" : "unit: in");
        assertThat(other).isNotEqualTo(text);
        MakeFile mixed = read(Parts.with(withoutTheRest(other), make.name(), parts));
        assertThat(mixed.measured()).isEqualTo(make.measured());
        assertThat(mixed.cloth()).isEqualTo(make.cloth());
        assertThat(mixed.boot()).isEqualTo(make.boot());
    }

    /** Of sections that are no things, lengths would be others in another unit. */
    private static String withoutTheRest(String text) {
        var keys = new java.util.LinkedHashMap<>(Parts.tree(text).entries());
        keys.keySet().removeAll(List.of("print", "sewing", "after wearing", "first pair", "learnt"));
        return stretchwright.intake.MakeText.of(new stretchwright.intake.Tree.Keys(keys, 0));
    }

    @Test
    void whatWearTaughtOfOneClothIsNotTakenToAnother() {
        String text = new String(Rooms.example("evening-practice"), StandardCharsets.UTF_8)
                + "learnt: {cloth: {pull across: 115 %}}\n";
        Map<Kind, String> cloth = Map.of(Kind.FABRIC, parts(text).get(Kind.FABRIC));
        assertThat(Parts.with(text, "Next", cloth)).doesNotContain("learnt");
        Map<Kind, String> boot = Map.of(Kind.BOOT, parts(text).get(Kind.BOOT));
        assertThat(Parts.with(text, "Next", boot)).contains("learnt");
    }
}
