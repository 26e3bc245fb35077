package stretchwright.cli;

import java.util.Optional;
import java.util.function.DoubleSupplier;
import picocli.CommandLine.Option;
import stretchwright.ground.Findings;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.LayClock;

/** How a search for a lay is asked for: its seed, and rounds of work in place of the clock. */
final class SearchOptions {
    /** A day, in seconds. */
    static final double LONGEST = 86_400;

    /** Share of the time for exploring; the rest compresses. */
    private static final double EXPLORING = 0.8;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1")
    private long seed;

    @Option(names = "--rounds", paramLabel = "E,C", split = ",")
    private int[] rounds = {};

    long seed() {
        return seed;
    }

    void check(Findings findings) {
        if (rounds.length != 0 && (rounds.length != 2 || rounds[0] < 0 || rounds[1] < 0)) {
            findings.add("--rounds", Tell.said("rounds.are-not"), Tell.said("rounds.write"));
        }
    }

    /** The rounds asked for; empty where the clock decides. */
    Optional<Effort> effort() {
        return rounds.length == 2 ? Optional.of(new Effort(rounds[0], rounds[1])) : Optional.empty();
    }

    /**
     * @param elapsed seconds since the start, of so many; where rounds are asked for they do not count
     * @param stop ends the search at any time
     */
    LayClock clock(DoubleSupplier elapsed, double seconds, StopKey stop) {
        return effort().isPresent()
                ? LayClock.of(stop::asked, stop::asked)
                : LayClock.of(
                        () -> stop.asked() || elapsed.getAsDouble() >= EXPLORING * seconds,
                        () -> stop.asked() || elapsed.getAsDouble() >= seconds);
    }
}
