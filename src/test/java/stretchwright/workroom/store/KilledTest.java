package stretchwright.workroom.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Programs are killed while they save, at any moment: what they were told to stand, stands. */
class KilledTest {
    private static final String ALL = "stretchwright.workroom.store.Databases#all";

    /** Each so many rounds another database: its first opening is killed too. */
    private static final int FRESH = 10;

    /** Each so many rounds the server's side of the connections is cut, and the server itself falls. */
    private static final int CUT = 5;

    private static final int FALL = 6;

    private static final int LONGEST_MILLIS = 400;

    private static final int LONGEST_OPENING = 1500;

    @ParameterizedTest
    @MethodSource(ALL)
    @Tag("slow")
    void whatWasAcknowledgedIsThere(Address address) throws Exception {
        rounds(address, 6, 20261130);
    }

    @ParameterizedTest
    @MethodSource(ALL)
    @Tag("long")
    void whatWasAcknowledgedIsThereTwoHundredTimes(Address address) throws Exception {
        rounds(address, 200, 731);
    }

    private static void rounds(Address first, int rounds, long seed) throws Exception {
        Random random = new Random(seed);
        Address at = first;
        Killing killing = new Killing();
        long acknowledged = 0;
        Killing.Running next = Killing.loaded(random.nextLong());
        for (int i = 0; i < rounds; i++) {
            if (i % FRESH == FRESH - 1) {
                acknowledged += killing.acknowledged();
                killing = new Killing();
                at = at instanceof Address.Folder ? Databases.folder() : TestServer.fresh().orElseThrow();
            }
            Killing.Running saver = next;
            next = Killing.loaded(random.nextLong());
            saver.tell(at);
            boolean fresh = i % FRESH == FRESH - 1;
            if (!fresh) {
                saver.await("open");
            }
            Thread.sleep(random.nextInt(fresh ? LONGEST_OPENING : LONGEST_MILLIS));
            if (at instanceof Address.Server server) {
                disturb(server, i, random);
            }
            killing.kill(saver);
            killing.allIsThere(at, "seed " + seed + ", round " + i);
        }
        new Killing().kill(next);
        acknowledged += killing.acknowledged();
        assertThat(acknowledged).isGreaterThan(rounds);
        System.out.printf(
                "%s: killed %d times, %d saves and other steps acknowledged, lost 0%n",
                first instanceof Address.Folder ? "SQLite" : "PostgreSQL", rounds, acknowledged);
    }

    private static void disturb(Address.Server server, int round, Random random) throws Exception {
        if (round % CUT == CUT - 1) {
            TestServer.cut(server);
            Thread.sleep(random.nextInt(LONGEST_MILLIS));
        }
        if (round % FALL == FALL - 1) {
            TestServer.fall();
            Thread.sleep(random.nextInt(LONGEST_MILLIS));
        }
    }
}
