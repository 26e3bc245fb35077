package stretchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

class SideBySideTest {
    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The first job ends last where there are two cores; what it says still comes first. */
    @Test
    void whatIsSaidAndFoundComesInTheOrderOfTheJobs() {
        CountDownLatch others = new CountDownLatch(Runtime.getRuntime().availableProcessors() > 1 ? 4 : 0);
        List<String> said = new ArrayList<>();
        List<Integer> found = SideBySide.all(5, said::add, (number, progress) -> {
            progress.say(number + " begins");
            if (number == 0) {
                await(others);
            } else {
                others.countDown();
            }
            progress.say(number + " ends");
            return number * number;
        });
        assertThat(found).containsExactly(0, 1, 4, 9, 16);
        assertThat(said)
                .containsExactly(
                        "0 begins",
                        "0 ends",
                        "1 begins",
                        "1 ends",
                        "2 begins",
                        "2 ends",
                        "3 begins",
                        "3 ends",
                        "4 begins",
                        "4 ends");
    }

    @Test
    void aFaultIsThrownAsItWas() {
        IllegalStateException fault = new IllegalStateException("as it was");
        assertThatThrownBy(() -> SideBySide.all(3, line -> {}, (number, progress) -> {
                    if (number == 1) {
                        throw fault;
                    }
                    return number;
                }))
                .isSameAs(fault);
    }

    @Test
    void noJobsGiveNoResults() {
        assertThat(SideBySide.all(0, line -> {}, (number, progress) -> number)).isEmpty();
    }
}
