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
import stretchwright.body.Measure;
import stretchwright.body.PoseLength;
import stretchwright.body.SkinExtension;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Machine;
import stretchwright.pattern.MarkName;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Shift;
import stretchwright.pattern.Stitch;
import stretchwright.print.Source.Literal;
import stretchwright.print.kit.Phrases;
import stretchwright.sewing.StepKind;
import stretchwright.sewing.Threading;

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

    private static final Map<String, List<String>> NOT_WRITTEN = Map.ofEntries(
            Map.entry(
                    "keys of the make file, the same in every language",
                    List.of(
                            "fold across: [100 mm,",
                            "fold along: [100 mm,",
                            "hang across: [112 mm, 125 mm, 148 mm]",
                            "hang along: [[500 g, 134 mm]]",
                            "strip: {width across: 43 mm,",
                            "back across: [131 mm, 116 mm],",
                            "after 30 min: 151 mm}",
                            "wrap hip:",
                            "wrap calf:",
                            "pose lengths: {back waist to front waist: [70, 78]}",
                            "reaches pose: true",
                            "other papers",
                            "on hand",
                            "usable width",
                            "after wearing",
                            "after wearing:",
                            "date: ",
                            "symptom: ",
                            "change: ",
                            "name: ",
                            "stitch length",
                            "first pair.")),
            Map.entry(
                    "keys of the make file that are read off a cloth, or a first pair",
                    List.of(
                            "stitch length",
                            "fabric.on hand",
                            "fabric.hang across",
                            "fabric.hang along",
                            "fabric.wrap hip",
                            "fabric.wrap calf",
                            "fabric.shows through at",
                            "fabric.shrinkage across",
                            "fabric.shrinkage along",
                            "fabric.strip.back across",
                            "fabric.strip.width across",
                            "fabric.strip.after 30 min",
                            "fabric.strip.back along",
                            "fabric.strip.width along",
                            "fabric.reaches pose",
                            "first pair.")),
            Map.entry(
                    "classes of drawings and pages, and how a month is written",
                    List.of("lab est halo", "small halo", "thing new", "LLLL uuuu")),
            Map.entry(
                    "terms in the make file and the report that are written otherwise than their constants",
                    Stream.of(
                                    Stream.of("own profile", "%.1f %% off every girth"),
                                    Stream.of(Dimension.What.values())
                                            .map(Dimension.What::word)
                                            .filter(w -> w.matches(".*[-,:].*")),
                                    Stream.of(LowerEnd.Hem.values()).map(LowerEnd.Hem::word),
                                    Stream.of(Machine.values())
                                            .map(Machine::word)
                                            .filter(w -> w.contains(" ")),
                                    Stream.of(Parts.Pocket.Kind.values())
                                            .map(Parts.Pocket.Kind::word)
                                            .filter(w -> w.contains(" ")),
                                    Stream.of(Stitch.values())
                                            .map(Stitch::plainName)
                                            .filter(w -> w.contains(" ")),
                                    Stream.of(Shift.values()).map(Shift::word).filter(w -> w.contains("-")),
                                    Stream.of(MarkName.KEY_POCKET.word()))
                            .flatMap(words -> words)
                            .toList()),
            Map.entry(
                    "names of measures and lengths in the make file, of poses in the report: the same in every language",
                    Stream.of(
                                    Stream.of(Measure.values()).map(Measure::term),
                                    Stream.of(PoseLength.Course.values()).map(PoseLength.Course::word),
                                    SkinExtension.table().stream().map(SkinExtension::pose))
                            .flatMap(words -> words)
                            .filter(word -> word.contains(" "))
                            .distinct()
                            .toList()),
            Map.entry("folders as a system calls them", List.of("Library", "Application Support")),
            Map.entry("what a database or a disk is told, and says", List.of(" LIMIT ", "No space left")),
            Map.entry("of files that come with the program", List.of("alone mm", "navel ")),
            Map.entry(
                    "names of steps and threads in the make file and the report, the same in every language",
                    Stream.of(
                                    Stream.of("test "),
                                    Stream.of(StepKind.values()).map(StepKind::word),
                                    Stream.of(Threading.values())
                                            .map(Threading::word)
                                            .filter(w -> w.contains(" ")))
                            .flatMap(words -> words)
                            .toList()),
            Map.entry("names of paper", List.of("Letter", "Tabloid", "roll 420 mm", "roll ")),
            Map.entry(
                    "what is written into a make file: its keys",
                    List.of(
                            "[\\\"']?after wearing[\\\"']?\\\\s*:.*",
                            "answer: \\\"",
                            "\\\"answer\\\": \\\"",
                            "\\\"after wearing\\\": [{\\\"date\\\": \\\"",
                            "\\\", \\\"symptom\\\": \\\"",
                            "\\\"change\\\": {")),
            Map.entry("a mark of the program, a name inside it", List.of("Stretchwright", "stretchwright ", " again")),
            Map.entry(
                    "of pages and drawings, never seen",
                    List.of(
                            "a area",
                            "cut ",
                            "sew ",
                            "-wrong ",
                            "chalktext halo",
                            "small halo",
                            "lab est halo",
                            "big less",
                            "mark look",
                            "num est",
                            "thing new",
                            "LLLL uuuu",
                            "px \\\"Liberation Sans\\\",Arial,Helvetica,sans-serif}\\n",
                            "default-src 'none'; style-src 'sha256-",
                            "'; script-src 'sha256-",
                            "'; base-uri 'none'; form-action 'none'")),
            Map.entry(
                    "words of a file format",
                    List.of(
                            "ASTM/D13Proposal 1 Version: D 6673-04",
                            "Author: Stretchwright",
                            "Style Name: ",
                            "Sample Size: ",
                            "Units: METRIC",
                            "Piece Name: ",
                            "Size: ",
                            "Quantity: ",
                            "Material: ",
                            "Solid line",
                            "Artifact",
                            "Tabs")),
            Map.entry(
                    "words of the report and of tables, for other programs",
                    List.of(
                            "left and right",
                            "as drawn",
                            "as drawn and mirrored",
                            "hair loop",
                            "boot cover half",
                            "pad pocket",
                            "test strip across",
                            "test strip along",
                            " half",
                            "spare ",
                            "width ",
                            "seam ",
                            "taken across",
                            "taken along",
                            "taken crotch",
                            "taken waistband",
                            "taken hem",
                            "dimensions per size",
                            "row,name,figure,age,unit,stature,stature origin,stature spread",
                            " origin,",
                            " spread",
                            "over boot",
                            "figure skate")),
            Map.entry(
                    "headers of answers",
                    List.of(
                            "Host",
                            "Origin",
                            "Connection",
                            "text/html; charset=utf-8",
                            "default-src 'none'; img-src 'self'; style-src 'self'; script-src 'self'; connect-src 'self'; worker-src 'self'; form-action 'self';",
                            "camera=(), microphone=(), geolocation=(), payment=(), usb=(), serial=(), midi=(), hid=()",
                            " base-uri 'none'; frame-ancestors 'none'",
                            "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'",
                            "default-src 'none'; style-src 'unsafe-inline'; script-src 'unsafe-inline';",
                            " base-uri 'none'; form-action 'none'; frame-ancestors 'none'")),
            Map.entry("a second cloth without a name, as the report calls it", List.of("Contrast ")),
            Map.entry("what the reader of files calls a text to itself", List.of("make file")),
            Map.entry("headings of notes of the program's own, which nobody sees", List.of("new make")),
            Map.entry(
                    "what is wrong with a lay, for who mends the program; the page has words of its own for it",
                    List.of(
                            "%.2f mm lie double of a spread %.2f mm wide",
                            "cloth with a direction or a repeat is folded crosswise",
                            "the lay is %.2f mm wide, the cloth %.2f mm",
                            "the floor of %.2f mm lies above the length of %.2f mm",
                            "%s %d reaches beyond the cloth",
                            "the grain of %s %d lies %s from the selvage, not %s",
                            "%s %d is turned by %.1f degrees",
                            "%s %d is wrongly %s",
                            "%s %d does not lie on the fold",
                            "%s %d goes through %d layers",
                            "%s %d lies on a flaw",
                            "%s %d reaches beyond the remnant",
                            "%s is nearer to %s than %.1f mm",
                            "the notch %s lies at %d heights of the print",
                            "%s overlaps %s",
                            "%s %d lies there twice",
                            "%s: %d as drawn and %d mirrored are cut, wanted are %d%s",
                            " in mirrored pairs")),
            Map.entry(
                    "kinds of lines and keys of flaws on the page's lay, never seen",
                    List.of(
                            " laid",
                            "chalked folded",
                            "chalked dots",
                            "chalked ends",
                            "from left",
                            "from end",
                            " held",
                            "paper over",
                            " picked",
                            " wrongly",
                            "name oncard onpaper",
                            "oncard onpaper f13 strong",
                            "oncard onpaper strong ",
                            "oncard onpaper ")),
            Map.entry("what only developers see", List.of(" pages, ", " bytes)", "no finding")),
            Map.entry(
                    "what the system says",
                    List.of(
                            "Broken pipe",
                            "No space left on device",
                            "Disk quota exceeded",
                            "File name too long",
                            "Read-only file system")),
            Map.entry(
                    "steps and threads inside the program",
                    List.of("write ", "lay aside", "lay worker", "lay worker ", "strip lay")));

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
        assertThat(NOT_WRITTEN.values().stream().flatMap(List::stream)).allMatch(all::contains);
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
                && NOT_WRITTEN.values().stream().noneMatch(l -> l.contains(literal.text()));
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
