package stretchwright;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The arrows of ARCHITECTURE.md: which room may use which. A room missing, new or renamed fails too. */
class ArrowsTest {
    private static final Set<String> NOUNS = Set.of("ground", "body", "fabric", "boot", "pattern");
    private static final Map<String, Set<String>> MAY_USE = Map.ofEntries(
            Map.entry("ground", Set.of()),
            Map.entry("body", Set.of("ground")),
            Map.entry("fabric", Set.of("ground")),
            Map.entry("boot", Set.of("ground")),
            Map.entry("pattern", Set.of("ground")),
            Map.entry("balance", Set.of("ground")),
            Map.entry("settle", with(NOUNS, "balance")),
            Map.entry("draft", with(NOUNS, "settle")),
            Map.entry("fit", with(NOUNS, "settle")),
            Map.entry("lay", Set.of("ground", "pattern", "fabric")),
            Map.entry("sewing", Set.of("ground", "pattern", "fabric")),
            Map.entry("exchange", Set.of("ground", "pattern")),
            Map.entry("print", Set.of("ground", "pattern", "fabric", "body", "boot", "settle", "fit", "lay", "sewing")),
            Map.entry("intake", with(NOUNS, "fit", "sewing", "print")),
            Map.entry("report", with(NOUNS, "settle", "fit", "lay", "sewing", "print", "intake")),
            Map.entry("advice", with(NOUNS, "settle", "draft", "fit", "lay", "print", "intake")),
            Map.entry(
                    "make",
                    with(NOUNS, "draft", "fit", "lay", "sewing", "exchange", "print", "intake", "report", "advice")),
            Map.entry("wearing", with(NOUNS, "settle", "fit", "intake", "report", "advice", "make")),
            Map.entry(
                    "many",
                    with(
                            NOUNS,
                            "draft",
                            "fit",
                            "lay",
                            "sewing",
                            "exchange",
                            "print",
                            "intake",
                            "report",
                            "advice",
                            "make")),
            Map.entry("workroom", with(NOUNS, "lay", "intake", "report", "make", "many")),
            Map.entry(
                    "cli",
                    Set.of(
                            "ground",
                            "lay",
                            "print",
                            "intake",
                            "report",
                            "advice",
                            "make",
                            "wearing",
                            "many",
                            "workroom")),
            Map.entry(
                    "web",
                    with(
                            NOUNS,
                            "fit",
                            "lay",
                            "sewing",
                            "print",
                            "intake",
                            "report",
                            "advice",
                            "make",
                            "wearing",
                            "many",
                            "workroom")));

    /** Rooms inside rooms, each with what it may use of its own room; print may use them all, and lay its nest. */
    private static final Map<String, Set<String>> INNER = Map.ofEntries(
            Map.entry("lay.nest", Set.of()),
            Map.entry("print.kit", Set.of()),
            Map.entry("print.sheets", Set.of("print.kit")),
            Map.entry("print.steps", Set.of("print.kit")),
            Map.entry("print.cloth", Set.of("print.kit")),
            Map.entry("print.fit", Set.of("print.kit")),
            Map.entry("print.cards", Set.of("print.kit")),
            Map.entry("workroom.store", Set.of()),
            Map.entry("workroom.archive", Set.of("workroom.store")),
            Map.entry("workroom.jobs", Set.of("workroom.store")),
            Map.entry("web.door", Set.of()),
            Map.entry("web.form", Set.of()),
            Map.entry("web.draw", Set.of()),
            Map.entry("web.frame", Set.of("web.door")),
            Map.entry("web.join", Set.of("web.frame", "web.door")),
            Map.entry("web.start", Set.of("web.frame", "web.draw", "web.things", "web.ask")),
            Map.entry("web.things", Set.of("web.frame", "web.form", "web.door", "web.draw")),
            Map.entry("web.club", Set.of("web.frame", "web.form", "web.door")),
            Map.entry("web.worn", Set.of("web.frame", "web.form", "web.door", "web.draw", "web.draft")),
            Map.entry("web.ask", Set.of("web.frame", "web.form", "web.door", "web.draw")),
            Map.entry("web.draft", Set.of("web.frame", "web.form", "web.door", "web.draw", "web.things")),
            Map.entry("web.lay", Set.of("web.frame", "web.form", "web.door", "web.draw")),
            Map.entry("web.paper", Set.of("web.frame", "web.form", "web.door", "web.draw")),
            Map.entry("web.sew", Set.of("web.frame", "web.form", "web.door", "web.draw")));

    /** Arrows go down; rooms of one floor never use each other. */
    private static final List<Set<String>> FLOORS = List.of(
            Set.of("ground"),
            Set.of("body", "fabric", "boot", "pattern", "balance"),
            Set.of("settle"),
            Set.of("draft", "fit", "lay", "sewing", "exchange"),
            Set.of("print"),
            Set.of("intake"),
            Set.of("report", "advice"),
            Set.of("make"),
            Set.of("wearing", "many"),
            Set.of("workroom"),
            Set.of("web", "cli"));

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("stretchwright");

    @Test
    void theRoomsAreTheOnesOfThePlan() throws IOException {
        try (Stream<Path> folders = Files.list(Path.of("src/main/java/stretchwright"))) {
            Set<String> found = new TreeSet<>();
            folders.filter(Files::isDirectory)
                    .forEach(f -> found.add(f.getFileName().toString()));
            assertThat(found).isEqualTo(new TreeSet<>(MAY_USE.keySet()));
        }
    }

    @Test
    void theInnerRoomsAreTheOnesOfThePlan() throws IOException {
        Path root = Path.of("src/main/java/stretchwright");
        try (Stream<Path> folders = Files.walk(root)) {
            Set<String> found = new TreeSet<>();
            folders.filter(Files::isDirectory)
                    .map(root::relativize)
                    .filter(f -> f.getNameCount() > 1)
                    .forEach(f -> found.add(f.toString().replace('/', '.')));
            assertThat(found).isEqualTo(new TreeSet<>(INNER.keySet()));
        }
    }

    @Test
    void everyRoomHasADoorPlate() {
        Stream.concat(MAY_USE.keySet().stream(), INNER.keySet().stream())
                .forEach(room -> assertThat(
                                Path.of("src/main/java/stretchwright", room.replace('.', '/'), "package-info.java"))
                        .exists());
    }

    @Test
    void whatARoomMayUseStandsOnALowerFloor() {
        assertThat(FLOORS.stream().flatMap(Set::stream)).containsExactlyInAnyOrderElementsOf(MAY_USE.keySet());
        MAY_USE.forEach((room, allowed) -> assertThat(allowed).as(room).allMatch(other -> floor(other) < floor(room)));
    }

    private static int floor(String room) {
        return IntStream.range(0, FLOORS.size())
                .filter(i -> FLOORS.get(i).contains(room))
                .findFirst()
                .orElseThrow();
    }

    @Tag("slow")
    @Test
    void arrowsOnlyGoWithTheJob() {
        MAY_USE.forEach((room, allowed) -> noClasses()
                .that()
                .resideInAPackage("stretchwright." + room + "..")
                .should()
                .dependOnClassesThat(describe(
                        "stand in a room that " + room + " may not use",
                        other -> roomOf(other) != null
                                && !room.equals(roomOf(other))
                                && !allowed.contains(roomOf(other))))
                .allowEmptyShould(true)
                .check(CLASSES));
    }

    @Tag("slow")
    @Test
    void innerRoomsUseOfTheirOwnRoomOnlyTheKit() {
        INNER.forEach((inner, allowed) -> noClasses()
                .that()
                .resideInAPackage("stretchwright." + inner)
                .should()
                .dependOnClassesThat(describe("stand in a part of the room that " + inner + " may not use", other -> {
                    String part = part(other);
                    return roomOf(inner).equals(roomOf(other)) && !part.equals(inner) && !allowed.contains(part);
                }))
                .check(CLASSES));
    }

    /** The plain layout engine knows outlines and a strip, and nothing of garments. */
    @Tag("slow")
    @Test
    void theNestUsesOnlyTheGround() {
        noClasses()
                .that()
                .resideInAPackage("stretchwright.lay.nest")
                .should()
                .dependOnClassesThat(describe(
                        "stand outside nest and ground",
                        other -> roomOf(other) != null
                                && !part(other).equals("lay.nest")
                                && !part(other).equals("ground")))
                .check(CLASSES);
    }

    @Test
    void filesClockAndNetworkStayAtTheDoors() {
        noClasses()
                .that()
                .resideOutsideOfPackages(
                        "stretchwright", "stretchwright.workroom..", "stretchwright.cli..", "stretchwright.web..")
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.io.File")
                .orShould()
                .dependOnClassesThat()
                .resideInAnyPackage("java.nio.file..", "java.net..")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(java.time.LocalDate.class, "now")
                .check(CLASSES);
    }

    /** What a database is asked is asked by the workroom. */
    @Tag("slow")
    @Test
    void databasesAreAskedByTheWorkroomOnly() {
        noClasses()
                .that()
                .resideOutsideOfPackage("stretchwright.workroom..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "java.sql..",
                        "javax.sql..",
                        "org.sqlite..",
                        "org.postgresql..",
                        "com.zaxxer..",
                        "org.jdbi..",
                        "org.flywaydb..",
                        "com.github.kagkarlsson..")
                .check(CLASSES);
    }

    private static String roomOf(JavaClass type) {
        String name = type.getPackageName();
        if (!name.startsWith("stretchwright.")) {
            return name.equals("stretchwright") ? "Main" : null;
        }
        return roomOf(part(type));
    }

    private static String roomOf(String part) {
        return part.contains(".") ? part.substring(0, part.indexOf('.')) : part;
    }

    /** The room with its inner room, such as "print.kit". */
    private static String part(JavaClass type) {
        return type.getPackageName().replaceFirst("^stretchwright\\.?", "");
    }

    private static Set<String> with(Set<String> rooms, String... others) {
        return Stream.concat(rooms.stream(), Stream.of(others)).collect(Collectors.toUnmodifiableSet());
    }
}
