package stretchwright.workroom.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Programs are killed while they save, at any moment: what they were told to stand, stands. */
class KilledTest {
    /** Each so many rounds another database: its first opening is killed too. */
    private static final int FRESH = 10;

    /** Each so many rounds the server's side of the connections is cut, and the server itself falls. */
    private static final int CUT = 5;

    private static final int FALL = 20;

    private static final int LONGEST_MILLIS = 400;

    private static final int MOST_LINES = 30;

    private static final int LONGEST_AFTER = 20;

    private static final int LONGEST_OPENING = 1500;

    private interface Place {
        Address fresh();
    }

    @Test
    @Tag("slow")
    void whatWasAcknowledgedIsThere() throws Exception {
        rounds(Databases::folder, Optional.empty(), 6, 20261130);
    }

    @Test
    @Tag("slow")
    void whatAServerAcknowledgedIsThere() throws Exception {
        onServer(6, 20261130);
    }

    @Test
    @Tag("long")
    void whatWasAcknowledgedIsThereTwoHundredTimes() throws Exception {
        rounds(Databases::folder, Optional.empty(), 200, 731);
    }

    @Test
    @Tag("long")
    void whatAServerAcknowledgedIsThereTwoHundredTimes() throws Exception {
        onServer(200, 731);
    }

    private static void onServer(int rounds, long seed) throws Exception {
        Optional<TestServer> server = TestServer.own();
        assumeTrue(server.isPresent(), "no PostgreSQL here");
        rounds(server.get()::database, server, rounds, seed);
    }

    private static void rounds(Place place, Optional<TestServer> server, int rounds, long seed) throws Exception {
        Random random = new Random(seed);
        Address at = place.fresh();
        Killing killing = new Killing();
        long acknowledged = 0;
        Killing.Running next = Killing.loaded(random.nextLong());
        for (int i = 0; i < rounds; i++) {
            if (i % FRESH == FRESH - 1) {
                acknowledged += killing.acknowledged();
                killing = new Killing();
                at = place.fresh();
            }
            Killing.Running saver = next;
            next = Killing.loaded(random.nextLong());
            saver.tell(at);
            boolean fresh = i % FRESH == FRESH - 1;
            if (!fresh) {
                saver.await("open");
            }
            if (fresh) {
                Thread.sleep(random.nextInt(LONGEST_OPENING));
            } else {
                // by what it did and not by the clock: on a busy machine too it is killed in the middle of its work
                saver.awaitLines(random.nextInt(MOST_LINES));
                Thread.sleep(random.nextInt(LONGEST_AFTER));
            }
            if (at instanceof Address.Server database) {
                disturb(server.orElseThrow(), database, i, random);
            }
            killing.kill(saver);
            killing.allIsThere(at, "seed " + seed + ", round " + i);
        }
        new Killing().kill(next);
        acknowledged += killing.acknowledged();
        assertThat(acknowledged).isGreaterThan(rounds);
        System.out.printf(
                "%s: killed %d times, %d saves and other steps acknowledged, lost 0%n",
                server.isEmpty() ? "SQLite" : "PostgreSQL", rounds, acknowledged);
    }

    private static void disturb(TestServer server, Address.Server database, int round, Random random) throws Exception {
        if (round % CUT == CUT - 1) {
            server.cut(database);
            Thread.sleep(random.nextInt(LONGEST_MILLIS));
        }
        if (round % FALL == CUT) {
            server.fall();
            Thread.sleep(random.nextInt(LONGEST_MILLIS));
        }
    }
}
