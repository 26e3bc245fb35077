package stretchwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import stretchwright.ground.Waiting;
import stretchwright.report.Program;
import tools.jackson.databind.json.JsonMapper;

/** The launcher in a folder of its own, with a jar of the classes under test, and its class archive. */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {
    private static final String VERSION = "stretchwright " + Program.VERSION + System.lineSeparator();

    @TempDir
    private Path folder;

    private Path home;

    @BeforeEach
    void house() throws IOException {
        home = Files.createDirectories(folder.resolve("home"));
        Files.createDirectories(home.resolve("src/main"));
        Files.createDirectories(home.resolve("target"));
        Files.createDirectories(home.resolve("examples"));
        Files.createFile(home.resolve("pom.xml"));
        Files.copy(Path.of("stretchwright"), home.resolve("stretchwright"), StandardCopyOption.COPY_ATTRIBUTES);
        Files.copy(Path.of("examples/evening-practice.yaml"), home.resolve("examples/evening-practice.yaml"));
        FileTime earlier = FileTime.from(Instant.now().minusSeconds(60));
        for (Path source : List.of(home.resolve("pom.xml"), home.resolve("src/main"))) {
            Files.setLastModifiedTime(source, earlier);
        }
    }

    /** The launcher's background work ends before its folder is taken away. */
    @AfterEach
    void quiet() {
        ProcessHandle.allProcesses()
                .filter(p -> p.info().commandLine().orElse("").contains(folder.toString()))
                .forEach(p -> {
                    p.destroyForcibly();
                    p.onExit().orTimeout(30, TimeUnit.SECONDS).join();
                });
    }

    private record Ended(int code, String out, String err) {}

    private Ended run(Path where, Map<String, String> environment, String... words) throws Exception {
        List<String> command =
                new ArrayList<>(List.of(where.resolve("stretchwright").toString()));
        command.addAll(List.of(words));
        Path out = Files.createTempFile(folder, "out", "");
        Path err = Files.createTempFile(folder, "err", "");
        ProcessBuilder builder =
                new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().putAll(environment);
        Process process = builder.start();
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        return new Ended(process.exitValue(), Files.readString(out), Files.readString(err));
    }

    /** A jar of the classes under test that finds the libraries where this test has them. */
    private void jar() throws IOException {
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, Main.class.getName());
        String libraries = Stream.of(System.getProperty("java.class.path").split(System.getProperty("path.separator")))
                .filter(p -> p.endsWith(".jar"))
                .map(p -> Path.of(p).toUri().toString())
                .collect(Collectors.joining(" "));
        manifest.getMainAttributes().put(Attributes.Name.CLASS_PATH, libraries);
        Path classes = Path.of("target/classes");
        try (OutputStream file = Files.newOutputStream(home.resolve("target/stretchwright.jar"));
                JarOutputStream jar = new JarOutputStream(file, manifest);
                Stream<Path> all = Files.walk(classes)) {
            for (Path entry : all.filter(Files::isRegularFile).toList()) {
                jar.putNextEntry(
                        new JarEntry(classes.relativize(entry).toString().replace('\\', '/')));
                jar.write(Files.readAllBytes(entry));
            }
        }
    }

    /** A stand-in for Java that notes its arguments, a line for each start, and fails where they hold the word. */
    private Map<String, String> fakeJava(String failing) throws IOException {
        Path bin = Files.createDirectories(folder.resolve("fake/bin"));
        Path java = Files.writeString(bin.resolve("java"), """
                #!/bin/sh
                echo "$*" >>"%s"
                case "$*" in *%s*) exit 1 ;; esac
                """.formatted(folder.resolve("started"), failing));
        Files.setPosixFilePermissions(java, PosixFilePermissions.fromString("rwxr-xr-x"));
        Files.writeString(home.resolve("target/stretchwright.jar"), "no jar");
        return Map.of("JAVA_HOME", folder.resolve("fake").toString());
    }

    private List<Path> archives(Path where) throws IOException {
        try (Stream<Path> all = Files.list(where.resolve("target"))) {
            return all.filter(p -> p.toString().endsWith(".jsa")).toList();
        }
    }

    /** What the launcher does in the background, done: its folder aside came and went, or never comes. */
    private Path awaitArchive() throws Exception {
        List<Path> archives = Waiting.until(Duration.ofSeconds(400), () -> archives(home), found -> !found.isEmpty());
        assertThat(archives).hasSize(1);
        return archives.get(0);
    }

    private List<String> started(int least) throws Exception {
        Path list = folder.resolve("started");
        return Waiting.until(
                Duration.ofSeconds(30),
                () -> Files.exists(list) ? Files.readAllLines(list) : List.of(),
                lines -> lines.size() >= least);
    }

    /** The archive comes after the command; it is used; moved, copied or cut it is not, and nothing is said about it. */
    @Tag("slow")
    @Test
    void theArchiveComesLaterAndIsNeverHeardOf() throws Exception {
        jar();
        assertThat(run(home, Map.of(), "--version")).isEqualTo(new Ended(0, VERSION, ""));
        Path archive = awaitArchive();
        assertThat(comesFromAnArchive(home)).isTrue();

        Path moved = folder.resolve("moved");
        copy(home, moved);
        assertThat(comesFromAnArchive(moved)).isFalse();
        assertThat(run(moved, Map.of(), "--version")).isEqualTo(new Ended(0, VERSION, ""));
        Ended json = run(
                moved,
                Map.of(),
                "body",
                moved.resolve("examples/evening-practice.yaml").toString(),
                "--json");
        assertThat(JsonMapper.builder().build().readTree(json.out()).has("bodyCheck"))
                .isTrue();

        try (RandomAccessFile cut = new RandomAccessFile(writable(archive).toFile(), "rw")) {
            cut.setLength(cut.length() / 2);
        }
        assertThat(run(home, Map.of(), "--version")).isEqualTo(new Ended(0, VERSION, ""));
        assertThat(comesFromAnArchive(home)).isFalse();
    }

    private static Path writable(Path file) throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));
        return file;
    }

    private boolean comesFromAnArchive(Path where) throws Exception {
        Path loaded = folder.resolve("loaded");
        Files.deleteIfExists(loaded);
        run(where, Map.of("_JAVA_OPTIONS", "-Xlog:class+load:file=" + loaded), "--version");
        return Files.readAllLines(loaded, StandardCharsets.UTF_8).stream()
                .anyMatch(l -> l.contains("stretchwright.cli.Commands source: shared objects file"));
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path entry : all.toList()) {
                Files.copy(entry, to.resolve(from.relativize(entry).toString()), StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
        // copying into a folder made it new
        Files.setLastModifiedTime(to.resolve("src/main"), Files.getLastModifiedTime(from.resolve("src/main")));
    }

    /** No place for it, say: the command was done before, and the next one does not try again. */
    @Tag("slow")
    @Test
    void anArchiveThatCannotBeWrittenChangesNothing() throws Exception {
        Map<String, String> java = fakeJava("Xshare:dump");
        assertThat(run(home, java, "make", "a.yaml")).isEqualTo(new Ended(0, "", ""));
        List<String> starts = started(3);
        assertThat(starts).hasSize(3);
        assertThat(starts.get(0)).endsWith("make a.yaml").doesNotContain("Archive");
        assertThat(starts.get(1)).contains("FirstRun").contains("DumpLoadedClassList");
        assertThat(starts.get(2)).contains("Xshare:dump");
        assertThat(run(home, java, "make", "a.yaml").code()).isZero();
        Thread.sleep(3000); // longer than the launcher waits
        assertThat(started(4)).hasSize(4);
        assertThat(archives(home)).isEmpty();
    }

    @Test
    void whatRunsLongHasBothCompilers() throws Exception {
        Map<String, String> java = fakeJava("FirstRun");
        String quick = "TieredStopAtLevel";
        assertThat(startOf(java, "--version")).contains(quick);
        assertThat(startOf(java, "--json", "make", "a.yaml", "--out", "out")).contains(quick);
        assertThat(startOf(java, "serve")).doesNotContain(quick);
        assertThat(startOf(java, "--quiet", "survey", "--bodies", "b.csv")).doesNotContain(quick);
        assertThat(startOf(java, makes(24))).contains(quick);
        assertThat(startOf(java, makes(25))).doesNotContain(quick);
    }

    /** Many makes in one command, of every kind of name. */
    private static String[] makes(int number) {
        List<String> kinds = List.of(".yaml", ".yml", ".json");
        return Stream.concat(
                        Stream.of("make"),
                        IntStream.range(0, number).mapToObj(i -> "m" + i + kinds.get(i % kinds.size())))
                .toArray(String[]::new);
    }

    private String startOf(Map<String, String> java, String... words) throws Exception {
        Files.deleteIfExists(folder.resolve("started"));
        assertThat(run(home, java, words).code()).isZero();
        return started(1).stream()
                .filter(l -> !l.contains("FirstRun"))
                .findFirst()
                .orElseThrow();
    }
}
