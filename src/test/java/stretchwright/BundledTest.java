package stretchwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the jar bundles stands in THIRD-PARTY.txt, with its licence and every notice it brings. */
class BundledTest {
    private static final Path LICENSES = Path.of("src/main/resources/META-INF/licenses");

    /** Of the profile "check" alone: none of it comes into the jar. */
    private static final Pattern FOR_TESTS = Pattern.compile("apiguardian-api|archunit.*|assertj-core|byte-buddy|"
            + "commons-math3|error_prone_annotations|itu|jackson-dataformat-yaml|jmh-core|jopt-simple|"
            + "json-schema-validator|junit-.*|opentest4j|surefire-.*|common-java5|common-junit.*|"
            + "playwright|driver|driver-bundle|dequeutilites|gson|commons-(codec|compress|io|lang3)");

    /** The same under the names of what is bundled: axe for browsers brings an older Jackson of another group. */
    private static final Pattern OLDER = Pattern.compile(".*/com/fasterxml/jackson/core/jackson-(core|databind)/.*");

    private record Row(String part, String version, String licence) {}

    private static List<Row> rows() throws IOException {
        List<Row> rows = new ArrayList<>();
        for (String line : Files.readAllLines(LICENSES.resolve("THIRD-PARTY.txt"))) {
            String[] cells = line.split(" \\| ");
            String[] name = cells[0].split(":");
            if (cells.length == 3 && name.length == 3) {
                rows.add(new Row(name[1], name[2], cells[1]));
            }
        }
        return rows;
    }

    /** The libraries of this run, as Maven keeps them: ARTIFACT/VERSION/ARTIFACT-VERSION.jar. */
    private static List<Path> libraries() {
        return Stream.of(System.getProperty("java.class.path").split(System.getProperty("path.separator")))
                .filter(p -> p.endsWith(".jar"))
                .map(Path::of)
                .filter(p -> !FOR_TESTS.matcher(artifact(p)).matches())
                .filter(p -> !OLDER.matcher(p.toString().replace('\\', '/')).matches())
                .toList();
    }

    private static String artifact(Path jar) {
        return jar.getParent().getParent().getFileName().toString();
    }

    private static String version(Path jar) {
        return jar.getParent().getFileName().toString();
    }

    @Test
    void theListIsWhatIsBundled() throws IOException {
        Set<String> listed =
                rows().stream().map(r -> r.part() + ":" + r.version()).collect(Collectors.toCollection(TreeSet::new));
        Set<String> bundled = libraries().stream()
                .map(p -> artifact(p) + ":" + version(p))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(listed)
                .as("a library new in pom.xml needs a row in " + LICENSES.resolve("THIRD-PARTY.txt"))
                .isEqualTo(bundled);
    }

    @Test
    void everyLicenceHasItsText() throws IOException {
        for (Row row : rows()) {
            Path text = switch (row.licence()) {
                case "Apache-2.0" -> Path.of("LICENSE");
                case "EPL-2.0" -> LICENSES.resolve("EPL-2.0.txt");
                default -> own(LICENSES.resolve(row.part()));
            };
            assertThat(text).as(row.part()).isNotEmptyFile();
        }
    }

    private static Path own(Path folder) {
        Path plain = folder.resolve("LICENSE");
        return Files.exists(plain) ? plain : folder.resolve("LICENSE.txt");
    }

    /** What a library says in its own LICENSE and NOTICE is said again, word for word, if it is not the plain Apache License. */
    @Test
    void everyNoticeIsKept() throws IOException {
        String apache = words(Files.readString(Path.of("LICENSE")));
        for (Path library : libraries()) {
            try (JarFile jar = new JarFile(library.toFile())) {
                for (JarEntry entry : notices(jar)) {
                    String own = words(text(jar, entry));
                    Path kept = LICENSES.resolve(artifact(library))
                            .resolve(Path.of(entry.getName()).getFileName());
                    if (!own.equals(apache)) {
                        assertThat(kept).as(library.toString()).exists();
                        assertThat(words(Files.readString(kept)))
                                .as(kept.toString())
                                .isEqualTo(own);
                    }
                }
            }
        }
    }

    private static List<JarEntry> notices(JarFile jar) {
        return jar.stream()
                .filter(e -> e.getName().matches("META-INF/[^/]*(LICENSE|NOTICE)[^/]*"))
                .toList();
    }

    private static String text(JarFile jar, JarEntry entry) throws IOException {
        try (InputStream in = jar.getInputStream(entry)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** Without white space; some write the Apache address with an s. */
    private static String words(String text) {
        return text.replaceAll("\\s+", "").replace("https://www.apache.org/licenses", "http://www.apache.org/licenses");
    }

    /** The jar itself, where one was built from this pom.xml. */
    @Test
    void theJarHoldsTheListAndNothingBesideIt() throws IOException {
        Path built = Path.of("target/stretchwright.jar");
        assumeTrue(
                Files.exists(built)
                        && Files.getLastModifiedTime(built).compareTo(Files.getLastModifiedTime(Path.of("pom.xml")))
                                > 0,
                "target/stretchwright.jar is not built, or older than pom.xml: not looked at");
        Set<String> listed = rows().stream().map(Row::part).collect(Collectors.toSet());
        try (JarFile jar = new JarFile(built.toFile())) {
            assertThat(jar.getEntry("META-INF/LICENSE")).isNotNull();
            assertThat(jar.getEntry("META-INF/licenses/THIRD-PARTY.txt")).isNotNull();
            for (JarEntry entry : jar.stream()
                    .filter(e -> e.getName().endsWith("/pom.properties"))
                    .toList()) {
                Properties properties = new Properties();
                properties.load(jar.getInputStream(entry));
                assertThat(properties.getProperty("artifactId"))
                        .satisfiesAnyOf(
                                name -> assertThat(listed).contains(name),
                                name -> assertThat(name).isEqualTo("stretchwright"));
            }
            assertThat(jar.stream().map(JarEntry::getName))
                    .noneMatch(n ->
                            n.startsWith("org/eclipse/jetty/websocket/") || n.startsWith("jakarta/servlet/resources/"));
            assertThat(jar.stream()
                            .filter(e -> !e.isDirectory())
                            .map(JarEntry::getName)
                            .filter(n -> n.startsWith("META-INF/resources/")))
                    .singleElement()
                    .asString()
                    .endsWith("/dist/htmx.min.js");
        }
    }
}
