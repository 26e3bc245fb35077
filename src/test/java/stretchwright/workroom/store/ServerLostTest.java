package stretchwright.workroom.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.BadInput;

/** A server that is not there, or goes away in the middle: told soon, and told truly. */
@Tag("slow")
class ServerLostTest {
    private static final String PASSWORD = "sesame-4711";

    private static Address.Server fresh() {
        Optional<Address.Server> fresh = TestServer.fresh();
        assumeTrue(fresh.isPresent(), "no PostgreSQL here");
        return fresh.get();
    }

    @Test
    void whatDoesNotAnswerIsToldSoonAndWithoutThePassword() throws Exception {
        int port;
        try (ServerSocket free = new ServerSocket(0)) {
            port = free.getLocalPort();
        }
        Address.Server nobody = new Address.Server("127.0.0.1:" + port + "/w", "maker", PASSWORD);
        long began = System.nanoTime();
        assertThatThrownBy(() -> Database.open(nobody))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("does not answer")
                .hasMessageNotContaining(PASSWORD);
        assertThat(System.nanoTime() - began).isLessThan(TimeUnit.SECONDS.toNanos(5));
        assertThat(nobody.toString()).doesNotContain(PASSWORD);
    }

    @Test
    void aServerThatListensAndSaysNothingIsToldToo() throws Exception {
        try (ServerSocket silent = new ServerSocket(0)) {
            long began = System.nanoTime();
            assertThatThrownBy(() -> Database.open(
                            new Address.Server("127.0.0.1:" + silent.getLocalPort() + "/w", "a", PASSWORD)))
                    .isInstanceOf(BadInput.class)
                    .hasMessageNotContaining(PASSWORD);
            assertThat(System.nanoTime() - began).isLessThan(TimeUnit.SECONDS.toNanos(15));
        }
    }

    @Test
    void anAddressHidesNoPasswordAndNoSettings() {
        for (String server : List.of(
                "maker:" + PASSWORD + "@host/w",
                "host/w?password=" + PASSWORD,
                "host/w?socketFactory=x",
                "host/w&a=b")) {
            assertThatThrownBy(() -> new Address.Server(server, "", ""))
                    .isInstanceOf(BadInput.class)
                    .hasMessageNotContaining(PASSWORD);
        }
        assertThat(new Address.Server("[::1]:5432/club-2_x", "", "").told())
                .isEqualTo("postgresql://[::1]:5432/club-2_x");
    }

    @Test
    void aDatabaseThatIsNotThereIsTold() {
        Address.Server server = fresh();
        Address.Server other = new Address.Server(server.server() + "none", server.user(), "");
        assertThatThrownBy(() -> Database.open(other))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("no such database");
    }

    @Test
    void aConnectionThatIsCutBeforeTheEndChangesNothing() {
        try (Database database = Database.open(fresh())) {
            Store store = new Store(database, Clock.systemUTC());
            store.save(Edit.fresh(Kind.BOOT, "a", "a", Links.NONE));
            assertThatThrownBy(() -> database.write(h -> {
                        h.execute("UPDATE thing SET now = 7");
                        return h.createQuery("SELECT pg_terminate_backend(pg_backend_pid())")
                                .mapTo(boolean.class)
                                .one();
                    }))
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("nothing was changed");
            store.save(Edit.fresh(Kind.BOOT, "b", "b", Links.NONE));
            database.mustBeSound();
        }
    }

    /** The commit reached the server, its answer never came: the save stands, and nobody is told that it does not. */
    @Test
    void anAnswerThatIsLostIsNotToldAsNothingChanged() throws Exception {
        Address.Server server = fresh();
        Database.open(server).close();
        try (Deaf deaf = new Deaf(server);
                Database database = Database.open(deaf.address())) {
            Store store = new Store(database, Clock.systemUTC());
            // the first on its connection: later ones name the words of a commit by a number
            deaf.toCommits.set(true);
            assertThatThrownBy(() -> store.save(Edit.fresh(Kind.BOOT, "b", "b", Links.NONE)))
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("nobody knows")
                    .hasMessageNotContaining("nothing was changed");
            deaf.toCommits.set(false);
            assertThat(store.named(Kind.BOOT, "b")).isPresent();
            store.save(Edit.fresh(Kind.BOOT, "c", "c", Links.NONE));
        }
    }

    @Test
    @Tag("slow")
    void whoHoldsTheServersLockTooLongIsTold() throws Exception {
        Address.Server server = fresh();
        try (Database database = Database.open(server);
                Database other = Database.open(server)) {
            Store store = new Store(database, Clock.systemUTC());
            other.write(h -> {
                assertThatThrownBy(() -> store.save(Edit.fresh(Kind.BOOT, "b", "b", Links.NONE)))
                        .isInstanceOf(BadInput.class)
                        .hasMessageContaining("another program is writing");
                return h;
            });
            store.save(Edit.fresh(Kind.BOOT, "b", "b", Links.NONE));
        }
    }

    /** Stands between program and server, and where it is told to, passes commits on and cuts the line before their answer. */
    private static final class Deaf implements AutoCloseable {
        final AtomicBoolean toCommits = new AtomicBoolean();
        private final ServerSocket ear = new ServerSocket(0);
        private final Address.Server server;
        private final int port;

        Deaf(Address.Server server) throws IOException {
            this.server = server;
            String place = server.server();
            this.port = Integer.parseInt(place.substring(place.indexOf(':') + 1, place.indexOf('/')));
            daemon(() -> {
                while (true) {
                    Socket near = ear.accept();
                    Socket far = new Socket("127.0.0.1", port);
                    daemon(() -> pass(near, far, true));
                    daemon(() -> pass(far, near, false));
                }
            });
        }

        Address.Server address() {
            String name = server.server().substring(server.server().indexOf('/'));
            return new Address.Server("127.0.0.1:" + ear.getLocalPort() + name, server.user(), "");
        }

        private interface Work {
            void run() throws Exception;
        }

        private static void daemon(Work work) {
            Thread thread = new Thread(() -> {
                try {
                    work.run();
                } catch (Exception e) {
                    // the line is cut: that is what it is for
                }
            });
            thread.setDaemon(true);
            thread.start();
        }

        private void pass(Socket from, Socket to, boolean fromProgram) throws Exception {
            byte[] some = new byte[65536];
            InputStream in = from.getInputStream();
            OutputStream out = to.getOutputStream();
            for (int n = in.read(some); n >= 0; n = in.read(some)) {
                boolean commit = fromProgram
                        && toCommits.get()
                        && new String(some, 0, n, StandardCharsets.ISO_8859_1).contains("COMMIT");
                if (commit) {
                    from.close();
                }
                out.write(some, 0, n);
                out.flush();
                if (commit) {
                    // until the server has done it
                    Thread.sleep(300);
                    to.close();
                    return;
                }
            }
            to.close();
        }

        @Override
        public void close() throws IOException {
            ear.close();
        }
    }
}
