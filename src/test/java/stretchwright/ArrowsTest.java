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
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
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
            Map.entry("draft", NOUNS),
            Map.entry("fit", NOUNS),
            Map.entry("lay", Set.of("ground", "pattern", "fabric")),
            Map.entry("sewing", Set.of("ground", "pattern", "fabric")),
            Map.entry("exchange", Set.of("ground", "pattern")),
            Map.entry("print", Set.of("ground", "pattern", "fabric", "body", "boot", "fit", "lay", "sewing")),
            Map.entry(
                    "make",
                    Set.of(
                            "ground",
                            "body",
                            "fabric",
                            "boot",
                            "pattern",
                            "draft",
                            "fit",
                            "lay",
                            "sewing",
                            "print",
                            "exchange")),
            Map.entry("cli", Set.of("ground", "make", "print", "lay")),
            Map.entry("web", Set.of("ground", "make", "print", "body", "pattern", "fabric", "fit", "lay", "sewing")));

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
    void everyRoomHasADoorPlate() {
        for (String room : MAY_USE.keySet()) {
            assertThat(Path.of("src/main/java/stretchwright", room, "package-info.java"))
                    .exists();
        }
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

    @Test
    void filesClockAndNetworkStayAtTheDoors() {
        noClasses()
                .that()
                .resideOutsideOfPackages("stretchwright", "stretchwright.cli..", "stretchwright.web..")
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

    private static String roomOf(JavaClass type) {
        String name = type.getPackageName();
        if (!name.startsWith("stretchwright.")) {
            return name.equals("stretchwright") ? "Main" : null;
        }
        String rest = name.substring("stretchwright.".length());
        return rest.contains(".") ? rest.substring(0, rest.indexOf('.')) : rest;
    }
}
