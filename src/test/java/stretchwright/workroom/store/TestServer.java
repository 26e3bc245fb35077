package stretchwright.workroom.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/**
 * A PostgreSQL server for the tests of this run, from the programs that Debian's package brings; each test gets a database of
 * its own. Where the package is not installed it says so, once, and the tests that ask for it are skipped.
 */
public final class TestServer {
    private static final AtomicInteger COUNT = new AtomicInteger();
    private static final Optional<TestServer> ONE = started();

    private final Path folder;
    private final Path programs;
    private final int port;

    private TestServer(Path folder, Path programs, int port) {
        this.folder = folder;
        this.programs = programs;
        this.port = port;
    }

    /** A database with nothing in it; empty where there is no server to be had. */
    public static Optional<Address.Server> fresh() {
        return ONE.map(TestServer::database);
    }

    /** The server ends every connection to a database, as an administrator would. */
    void cut(Address.Server database) {
        String name = database.server().substring(database.server().indexOf('/') + 1);
        run("SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = '" + name + "'");
    }

    /** The server falls in the middle of everything, and is started again. */
    void fall() throws IOException {
        run(asServer("pg_ctl", "-D", folder + "/data", "-m", "immediate", "stop"));
        launch();
    }

    /** One that no other test uses. */
    static Optional<TestServer> own() {
        return started();
    }

    private void run(String sql) {
        try (Connection connection = DriverManager.getConnection(
                        "jdbc:postgresql://127.0.0.1:" + port + "/postgres", "postgres", "");
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    Address.Server database() {
        String name = "w" + COUNT.incrementAndGet();
        run("CREATE DATABASE " + name);
        return new Address.Server("127.0.0.1:" + port + "/" + name, "postgres", "");
    }

    private static Optional<TestServer> started() {
        Optional<Path> programs = programs();
        if (programs.isEmpty()) {
            System.out.println("SKIPPED: no PostgreSQL here (Debian: apt-get install postgresql);"
                    + " the tests of the workroom run on SQLite alone");
            return Optional.empty();
        }
        try {
            int port;
            try (ServerSocket free = new ServerSocket(0)) {
                port = free.getLocalPort();
            }
            Path folder = Files.createTempDirectory("stretchwright-postgres");
            TestServer server = new TestServer(folder, programs.get(), port);
            Runtime.getRuntime().addShutdownHook(new Thread(server::stop));
            server.start();
            return Optional.of(server);
        } catch (IOException e) {
            System.out.println("SKIPPED: PostgreSQL did not start (" + e.getMessage()
                    + "); the tests of the workroom run on SQLite alone");
            return Optional.empty();
        }
    }

    private static Optional<Path> programs() {
        Path all = Path.of("/usr/lib/postgresql");
        if (!Files.isDirectory(all)) {
            return Optional.empty();
        }
        try (Stream<Path> versions = Files.list(all)) {
            return versions.map(v -> v.resolve("bin"))
                    .filter(bin -> Files.isExecutable(bin.resolve("initdb")))
                    .max(Comparator.naturalOrder());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void start() throws IOException {
        if (isRoot()) {
            run(Stream.of("chown", "postgres", folder.toString()));
        }
        run(asServer(
                "initdb", "-D", folder + "/data", "-A", "trust", "-U", "postgres", "-E", "UTF8", "--locale=C.UTF-8"));
        launch();
    }

    private void launch() throws IOException {
        run(asServer(
                "pg_ctl",
                "-w",
                "-D",
                folder + "/data",
                "-l",
                folder + "/log",
                "-o",
                "-p " + port
                        + " -c recovery_init_sync_method=syncfs -c listen_addresses=127.0.0.1 -c unix_socket_directories="
                        + folder,
                "start"));
    }

    private void stop() {
        try {
            run(asServer("pg_ctl", "-D", folder + "/data", "-m", "immediate", "stop"));
            try (Stream<Path> files = Files.walk(folder)) {
                files.sorted(Comparator.reverseOrder()).forEach(f -> f.toFile().delete());
            }
        } catch (IOException e) {
            System.err.println("the PostgreSQL of the tests did not end: " + e.getMessage());
        }
    }

    /** The server refuses to run as root. */
    private Stream<String> asServer(String program, String... arguments) {
        Stream<String> own = Stream.concat(Stream.of(programs.resolve(program).toString()), Stream.of(arguments));
        return isRoot() ? Stream.concat(Stream.of("runuser", "-u", "postgres", "--"), own) : own;
    }

    private static boolean isRoot() {
        return "root".equals(System.getProperty("user.name"));
    }

    private static void run(Stream<String> command) throws IOException {
        List<String> words = command.toList();
        Path said = Files.createTempFile("stretchwright", ".log");
        try {
            Process process = new ProcessBuilder(words)
                    .directory(new java.io.File("/"))
                    .redirectErrorStream(true)
                    .redirectOutput(said.toFile())
                    .start();
            if (!process.waitFor(60, TimeUnit.SECONDS) || process.exitValue() != 0) {
                process.destroyForcibly();
                throw new IOException(words + ": " + Files.readString(said));
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(e);
        } finally {
            Files.deleteIfExists(said);
        }
    }
}
