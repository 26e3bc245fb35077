package stretchwright.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.print.Source.Literal;
import stretchwright.print.kit.Phrases;

/** What stands on paper stands in words.properties, and nowhere else: a translation is one file. */
class PhrasesTest {
    private static final Pattern GAP = Pattern.compile("\\{(\\d+)}");

    /** What a reader would take for English: two words, a word with the space that joins it to others, a word with a capital. */
    private static final Pattern ENGLISH = Pattern.compile(".*[A-Za-z]+[^A-Za-z]*\\s[^A-Za-z]*[A-Za-z]{2,}.*"
            + "|\\W*\\s\\W*[A-Za-z]{3,}\\W*|\\W*[A-Za-z]{3,}\\W*\\s\\W*|[A-Z][a-z]{2,}\\W*");

    /** Where in a make file a finding stands; the last part of such a key. */
    private static final Pattern KEY = Pattern.compile("(wearer|boot|style)\\.[a-z. ]+| height");

    /** What fills all gaps at once. */
    private static final Pattern SEVERAL = Pattern.compile("values|parts|own|with\\(.*");

    /** Faults of the program itself stay English; what a request is refused with is never shown, the page tells it by its number. */
    private static final Pattern EXCEPTION = Pattern.compile("new \\w+(Exception|Error|Response)|fault|must");

    private static final Pattern MARKUP = Pattern.compile(".*<.*|.*\\w=\\\\\".*|.*\\{(stroke|fill|font).*|text\\{.*");

    /** Name and kind of a document: the kind stands in report.json, for other programs. */
    private static final Pattern DOCUMENT = Pattern.compile("new (Document|OpenFile)|file\\.finished");

    private static final Path SENTENCES = Path.of("src/main/resources/stretchwright");

    /** Rooms whose keys stand in rows, templates and annotations, where other tests look for them; and the words of values. */
    private static final Set<String> KEYS_ELSEWHERE = Set.of("intake", "web", "ground", "cli/help");

    static List<String> withSentences() {
        return rooms().filter(room -> !room.equals("cli/help")).toList();
    }

    static List<String> withKeysInTheCode() {
        return rooms().filter(room -> !KEYS_ELSEWHERE.contains(room)).toList();
    }

    /** Every room with a bundle of its own. */
    private static Stream<String> rooms() {
        try (Stream<Path> all = Files.walk(SENTENCES)) {
            return all
                    .filter(f -> f.endsWith("words.properties"))
                    .map(f -> SENTENCES.relativize(f.getParent()).toString().replace('\\', '/'))
                    .sorted()
                    .toList()
                    .stream();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void everyRoomThatTellsHasItsSentences() {
        assertThat(rooms())
                .contains(
                        "cli",
                        "exchange",
                        "fit",
                        "ground",
                        "intake",
                        "lay",
                        "lay/nest",
                        "make",
                        "many",
                        "print",
                        "wearing");
        assertThat(rooms().toList()).containsAll(KEYS_ELSEWHERE);
    }

    @ParameterizedTest
    @MethodSource("withKeysInTheCode")
    void theCodeAndTheFileHaveTheSameKeys(String room) {
        Set<String> used = new TreeSet<>();
        for (List<String> call : calls(room)) {
            assertThat(call.get(0)).as("a key is written where it is used").matches("\"[a-z0-9.-]+\"");
            used.add(key(call));
        }
        assertThat(used).isEqualTo(new TreeSet<>(sentences(room).keySet()));
    }

    @ParameterizedTest
    @MethodSource("withKeysInTheCode")
    void everyCallFillsEveryGap(String room) {
        Map<String, String> sentences = sentences(room);
        for (List<String> call : calls(room)) {
            boolean several = call.size() == 2 && SEVERAL.matcher(call.get(1)).matches();
            if (!several) {
                assertThat(gaps(sentences.getOrDefault(key(call), "")))
                        .as(key(call))
                        .hasSize(call.size() - 1);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("withSentences")
    void gapsAndApostrophesAreSound(String room) {
        sentences(room).forEach((key, sentence) -> {
            assertThat(sentence.strip()).as(key).isEqualTo(sentence).isNotEmpty();
            assertThat(sentence.replace("''", ""))
                    .as("%s: an apostrophe is written twice", key)
                    .doesNotContain("'");
            assertThat(GAP.matcher(sentence).replaceAll(""))
                    .as("%s: braces are for gaps", key)
                    .doesNotContain("{", "}");
            assertThat(gaps(sentence))
                    .as(key)
                    .containsExactlyElementsOf(
                            IntStream.range(0, gaps(sentence).size()).boxed().toList());
        });
    }

    /** A sentence that is written into the code again would be missing from every translation. */
    @ParameterizedTest
    @MethodSource("withSentences")
    void noEnglishStandsInTheCode(String room) {
        List<String> found = Source.of(room).stream()
                .filter(source -> !source.holdsRows())
                .flatMap(s -> s.literals().stream())
                .filter(PhrasesTest::isEnglish)
                .map(Literal::text)
                .toList();
        assertThat(found).as("move these into words.properties").isEmpty();
    }

    @Test
    void theGuardFindsEnglish() {
        String code =
                "class A { /** \"Not this one.\" */ void a() { b(\"A whole sentence.\"); c(1 + \" needed\", \"Print\");"
                        + " throw new IllegalStateException(\"a fault \" + \"of the program\"); } String d = \"d-e\"; }";
        assertThat(new Source(code).literals().stream().filter(PhrasesTest::isEnglish))
                .extracting(Literal::text)
                .containsExactly("A whole sentence.", " needed", "Print");
    }

    @Test
    void theListOfWhatIsNotWrittenHoldsNothingIdle() {
        Set<String> all = withSentences().stream()
                .flatMap(room -> Source.of(room).stream())
                .flatMap(s -> s.literals().stream())
                .map(Literal::text)
                .collect(Collectors.toSet());
        assertThat(NotWritten.ALL.values().stream().flatMap(List::stream)).allMatch(all::contains);
    }

    @Test
    void aSentenceIsFilledInItsOwnOrder() {
        assertThat(Phrases.of("lay.buy", "1.35 m or 1 1/2 yd")).isEqualTo("Buy 1.35 m or 1 1/2 yd.");
        assertThat(Phrases.of("drawing.one-way")).isEqualTo("one way: every piece's top this way");
        assertThat(Phrases.of("job.wearer", "O'Neil {0}")).isEqualTo("For O'Neil {0}.");
    }

    @Test
    void aMissingKeyAndAGapTooManyAreFaults() {
        assertThatThrownBy(() -> Phrases.of("lay.nothing")).hasMessageContaining("lay.nothing");
        assertThatThrownBy(() -> Phrases.of("lay.buy")).hasMessageContaining("lay.buy has 1 gaps");
        assertThatThrownBy(() -> Phrases.of("lay.buy", "1 m", "2 m")).hasMessageContaining("2 are filled");
    }

    private static boolean isEnglish(Literal literal) {
        return ENGLISH.matcher(literal.text().replaceAll("%[+.0-9]*[a-z]", "")).matches()
                && !literal.within(EXCEPTION)
                && !literal.directlyIn(DOCUMENT)
                && !KEY.matcher(literal.text()).matches()
                && stretchwright.intake.Table.keys().find(literal.text()).isEmpty()
                && !MARKUP.matcher(literal.text()).matches()
                && NotWritten.ALL.values().stream().noneMatch(l -> l.contains(literal.text()));
    }

    private static List<List<String>> calls(String room) {
        return Source.of(room).stream()
                .flatMap(s -> Stream.of("Phrases.of", "Tell.said").flatMap(call -> s.arguments(call).stream()))
                .toList();
    }

    private static String key(List<String> call) {
        return call.get(0).replace("\"", "");
    }

    private static Set<Integer> gaps(String sentence) {
        return GAP.matcher(sentence)
                .results()
                .map(MatchResult::group)
                .map(g -> Integer.valueOf(g.substring(1, g.length() - 1)))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Read line by line: a key that stands twice would not be seen otherwise. */
    private static Map<String, String> sentences(String room) {
        Map<String, String> all = new LinkedHashMap<>();
        Path file = Path.of("src/main/resources/stretchwright", room, "words.properties");
        try {
            for (String line : Files.readAllLines(file)) {
                if (!line.isBlank() && !line.startsWith("#")) {
                    String[] parts = line.split(" = ", 2);
                    assertThat(all.put(parts[0], parts[1]))
                            .as(parts[0] + " stands twice")
                            .isNull();
                }
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return all;
    }
}
