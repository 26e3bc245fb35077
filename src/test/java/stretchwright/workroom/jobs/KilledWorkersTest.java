package stretchwright.workroom.jobs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.workroom.store.Address;
import stretchwright.workroom.store.Database;
import stretchwright.workroom.store.Databases;
import stretchwright.workroom.store.TestServer;

/** Programs that are killed while they work lose nothing, and do nothing twice. */
class KilledWorkersTest {
    private static final int SPELL = 2;
    private static final int KILLS = 3;
    private static final long EVERY_MILLIS = 3000;

    private final List<Process> instances = new ArrayList<>();

    @AfterEach
    void end() {
        instances.forEach(Process::destroyForcibly);
    }

    private static Address.Server server() {
        Optional<Address.Server> server = TestServer.fresh();
        assumeTrue(server.isPresent(), "no PostgreSQL here: several programs at one queue were not tried");
        return server.orElseThrow();
    }

    @Tag("slow")
    @Test
    void twoAtOneServer() throws Exception {
        new Run(server(), 2, 40, 8).all();
    }

    @Tag("slow")
    @Test
    void oneAtAFile() throws Exception {
        new Run(Databases.folder(), 1, 12, 12).all();
    }

    @Tag("long")
    @Test
    void fourAtOneServer() throws Exception {
        new Run(server(), 4, 500, 12).allWhile(EVERY_MILLIS);
    }

    /** Whether it is time to kill one, so many milliseconds after the last. */
    private interface When {
        boolean now(Database database, long since);
    }

    /** One database, its jobs, and those who are killed at it. */
    private final class Run {
        private final Address at;
        private final int programs;
        private final int lays;
        private final int rounds;
        private int kills;

        Run(Address at, int programs, int lays, int rounds) {
            this.at = at;
            this.programs = programs;
            this.lays = lays;
            this.rounds = rounds;
        }

        /** A few are killed, each while something is half done. */
        void all() throws Exception {
            run((database, since) -> kills < KILLS && halfDone(database) > kills * lays / (2 * KILLS));
        }

        /** One is killed every so often until all is done. */
        void allWhile(long everyMillis) throws Exception {
            run((database, since) -> since > everyMillis);
        }

        private void run(When kill) throws Exception {
            try (Database database = Database.open(at)) {
                watch(database);
                Jobs jobs = Jobs.open(database);
                Map<String, Asked.Lay> asked = new LinkedHashMap<>();
                for (int i = 0; i < lays; i++) {
                    Asked.Lay lay = SmallLays.asked(i, rounds * 3 / 4, rounds / 4);
                    asked.put(jobs.add("lay " + i, lay).id(), lay);
                }
                long start = System.nanoTime();
                for (int i = 0; i < programs; i++) {
                    instances.add(JobInstance.start(at, SPELL));
                }
                untilDone(database, jobs, kill);
                double seconds = (System.nanoTime() - start) / 1e9;
                end();
                System.out.printf(
                        "%d lays of %d rounds by %d programs, %d killed: %.0f s, %.0f lays a minute, %d begun again%n",
                        lays, rounds, programs, kills, seconds, 60 * lays / seconds, count(database, "begins") - lays);
                mustBeAll(database, jobs, asked);
            }
        }

        private void untilDone(Database database, Jobs jobs, When kill) throws IOException, InterruptedException {
            long end = System.nanoTime() + TimeUnit.MINUTES.toNanos(15);
            long last = System.nanoTime();
            while (jobs.count(Job.State.DONE) < lays) {
                assertThat(System.nanoTime())
                        .as("done: " + jobs.count(Job.State.DONE))
                        .isLessThan(end);
                if (kill.now(database, (System.nanoTime() - last) / 1_000_000)) {
                    instances.remove(0).destroyForcibly().waitFor();
                    instances.add(JobInstance.start(at, SPELL));
                    kills++;
                    last = System.nanoTime();
                }
                Thread.sleep(10);
            }
        }

        /** Of what is half done the last one's number; 0 where nothing is. */
        private long halfDone(Database database) {
            return database.read(h -> h.createQuery(
                            "SELECT coalesce(max(number), 0) FROM job WHERE state = 'running' AND reached > 0")
                    .mapTo(long.class)
                    .one());
        }

        private void mustBeAll(Database database, Jobs jobs, Map<String, Asked.Lay> asked) {
            assertThat(kills).isGreaterThanOrEqualTo(KILLS);
            assertThat(jobs.list(lays + 1)).hasSize(lays).allMatch(j -> j.state() == Job.State.DONE);
            assertThat(count(database, "endings")).isEqualTo(lays);
            assertThat(count(database, "endings GROUP BY job HAVING count(*) > 1"))
                    .isZero();
            assertThat(count(database, "begins"))
                    .as("somebody was killed at work")
                    .isGreaterThan(lays);
            asked.entrySet().parallelStream()
                    .forEach(e ->
                            assertThat(jobs.files(e.getKey())).containsExactly(SmallLays.direct(e.getValue(), SPELL)));
        }

        /** The database itself writes down each beginning and each ending. */
        private void watch(Database database) {
            boolean file = at instanceof Address.Folder;
            for (String[] noted : new String[][] {
                {"begins", "NEW.tries > OLD.tries"}, {"endings", "NEW.state <> OLD.state AND NEW.state <> 'running'"}
            }) {
                database.write(h -> {
                    h.execute("CREATE TABLE " + noted[0] + " (job VARCHAR(36))");
                    String insert = "INSERT INTO " + noted[0] + " VALUES (NEW.id);";
                    if (file) {
                        return h.execute("CREATE TRIGGER note_" + noted[0] + " AFTER UPDATE ON job FOR EACH ROW WHEN "
                                + noted[1] + " BEGIN " + insert + " END");
                    }
                    h.execute("CREATE FUNCTION note_" + noted[0] + "() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN "
                            + insert + " RETURN NULL; END $$");
                    return h.execute("CREATE TRIGGER note_" + noted[0] + " AFTER UPDATE ON job FOR EACH ROW WHEN ("
                            + noted[1] + ") EXECUTE FUNCTION note_" + noted[0] + "()");
                });
            }
        }

        private long count(Database database, String from) {
            return database.read(h -> h.createQuery("SELECT count(*) FROM (SELECT job FROM " + from + ") AS x")
                    .mapTo(long.class)
                    .one());
        }
    }
}
