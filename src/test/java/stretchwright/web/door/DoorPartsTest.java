package stretchwright.web.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The parts of the door by themselves, with a clock of their own. */
class DoorPartsTest {
    private final AtomicLong clock = new AtomicLong();

    @Tag("slow")
    @Test
    void aPhraseIsItselfWhateverWhiteSpaceStandsAroundIt() {
        Phrase phrase = Phrase.of("  chalk canvas\u00A0 comet \n");
        assertThat(phrase.is("chalk canvas comet")).isTrue();
        assertThat(phrase.is(" chalk  canvas\tcomet ")).isTrue();
        assertThat(phrase.is("chalk canvas Comet")).isFalse();
        assertThat(phrase.is("")).isFalse();
        assertThat(phrase.is("chalk canvas comet".repeat(100))).isFalse();
    }

    @Test
    void anOpenPageNeedsAPhrase() {
        for (String host : new String[] {"0.0.0.0", "192.168.1.5", "::", "no.such.name.invalid"}) {
            assertThatThrownBy(() -> new Opening(host, 0, Optional.empty()))
                    .as(host)
                    .hasMessageContaining("must have");
        }
        assertThat(Opening.here(0).isShared()).isFalse();
        assertThat(new Opening("::1", 0, Optional.empty()).own(8000)).isEqualTo("http://[::1]:8000/");
    }

    @Test
    void aSessionEndsThirtyDaysAfterItsLastUse() {
        Sessions sessions = new Sessions(clock::get);
        String token = sessions.begin();
        for (int i = 0; i < 3; i++) {
            clock.addAndGet(Sessions.LASTS.toMillis());
            assertThat(sessions.use(token)).isTrue();
        }
        clock.addAndGet(Sessions.LASTS.toMillis() + 1);
        assertThat(sessions.use(token)).isFalse();
        assertThat(sessions.use(token)).isFalse();
    }

    @Test
    void theOneThatWasNotUsedForLongestMakesRoom() {
        Sessions sessions = new Sessions(clock::get);
        String first = sessions.begin();
        String second = sessions.begin();
        IntStream.range(2, Sessions.MOST).forEach(i -> sessions.begin());
        assertThat(sessions.use(first)).isTrue();
        sessions.begin();
        assertThat(sessions.use(first)).isTrue();
        assertThat(sessions.use(second)).isFalse();
        sessions.end(first);
        assertThat(sessions.use(first)).isFalse();
    }

    @Test
    void anAddressTriesAFewTimesAndThenOnceAWhile() {
        Tries tries = new Tries(clock::get);
        for (int i = 0; i < Tries.BURST; i++) {
            assertThat(tries.take("192.168.1.5")).isZero();
        }
        assertThat(tries.take("192.168.1.5")).isEqualTo(Tries.MILLIS_EACH);
        assertThat(tries.take("192.168.1.6")).as("another one").isZero();
        clock.addAndGet(Tries.MILLIS_EACH - 1);
        assertThat(tries.take("192.168.1.5")).isEqualTo(1);
        clock.addAndGet(1);
        assertThat(tries.take("192.168.1.5")).isZero();
        tries.giveBack("192.168.1.5");
        assertThat(tries.take("192.168.1.5")).isZero();
        assertThat(tries.take("192.168.1.5")).isPositive();
    }

    /** An hour of 100 tries a second, each from an address of its own. */
    @Test
    void allAddressesTogetherTryNoMoreThanOnceAWhileAndAreForgotten() {
        Tries tries = new Tries(clock::get);
        int looked = 0;
        for (int i = 0; i < 360_000; i++) {
            looked += tries.take("10." + (i >> 16 & 255) + "." + (i >> 8 & 255) + "." + (i & 255)) == 0 ? 1 : 0;
            clock.addAndGet(10);
        }
        assertThat(looked).isBetween(1200, 1200 + Tries.ALL_BURST);
        assertThat(tries.remembered()).isLessThanOrEqualTo(Tries.MOST);
    }

    @Test
    void theAddressesOfOneNetworkAreOne() {
        Tries tries = new Tries(clock::get);
        IntStream.range(0, Tries.BURST)
                .forEach(i -> assertThat(tries.take("2001:db8:1:2::" + i)).isZero());
        assertThat(tries.take("2001:db8:1:2:ffff::1")).isPositive();
        assertThat(tries.take("2001:db8:1:3::1")).isZero();
    }

    @Test
    void aSharedPageAnswersUnderItsAddressAndTheNameItWasGiven() {
        Hosts everywhere = new Hosts("0.0.0.0");
        assertThat(everywhere.has("192.168.1.5:8000", "192.168.1.5", 8000)).isTrue();
        assertThat(everywhere.has("localhost:8000", "127.0.0.1", 8000)).isTrue();
        assertThat(everywhere.has("localhost:8000", "192.168.1.5", 8000)).isFalse();
        assertThat(everywhere.has("192.168.1.6:8000", "192.168.1.5", 8000)).isFalse();
        assertThat(everywhere.has("studio.example:8000", "192.168.1.5", 8000)).isFalse();
        assertThat(everywhere.has("[fe80::1]:8000", "fe80:0:0:0:0:0:0:1", 8000)).isTrue();
        assertThat(everywhere.has("192.168.1.5", "192.168.1.5", 80)).isTrue();
        assertThat(everywhere.has(null, "192.168.1.5", 8000)).isFalse();
        Hosts named = new Hosts("Studio.local");
        assertThat(named.has("studio.LOCAL:8000", "192.168.1.5", 8000)).isTrue();
        assertThat(named.has("studio.local:8001", "192.168.1.5", 8000)).isFalse();
    }
}
