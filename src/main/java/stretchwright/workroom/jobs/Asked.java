package stretchwright.workroom.jobs;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import stretchwright.ground.BadInput;
import stretchwright.ground.Part;
import stretchwright.lay.Placed;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.StripInstance;

/** What a job is to do: all of it, so that whoever does it needs nothing else. By rounds, never by the clock. */
public sealed interface Asked {
    /** A night's work on a fast machine, and more than any search gains by. */
    int MOST_ROUNDS = 1_000_000;

    Job.Kind kind();

    /** Rounds, or parts that are kept one by one. */
    long size();

    /** A plain layout instance. */
    record Lay(StripInstance instance, long seed, Effort effort) implements Asked {
        public Lay {
            mustEnd(effort);
        }

        @Override
        public Job.Kind kind() {
            return Job.Kind.LAY;
        }

        @Override
        public long size() {
            return effort.explore() + effort.compress();
        }
    }

    /**
     * A make's own pieces on one of its cloths, searched on from a lay that holds.
     *
     * @param cloth its number among the make's lays, from 0
     * @param pinned pieces that stay where they are, by {@link Placed.Spot#id}
     */
    record Pieces(File make, int cloth, Placed from, Set<String> pinned, long seed, Effort effort) implements Asked {
        public Pieces {
            pinned = Set.copyOf(pinned);
            mustEnd(effort);
        }

        @Override
        public Job.Kind kind() {
            return Job.Kind.PIECES;
        }

        @Override
        public long size() {
            return effort.explore() + effort.compress();
        }
    }

    /**
     * Makes laid together. In one part: a club's tables hang on each other.
     *
     * @param makes one for each pair; the same may stand there several times
     * @param table its length, mm
     * @param effort of each search
     */
    record Club(List<File> makes, OptionalDouble table, long seed, Effort effort) implements Asked {
        public Club {
            makes = List.copyOf(makes);
            mustEnd(effort);
        }

        @Override
        public Job.Kind kind() {
            return Job.Kind.CLUB;
        }

        @Override
        public long size() {
            return 1;
        }
    }

    /**
     * One make for a table of bodies. In one part: drafting a body takes less than keeping it would.
     *
     * @param unit of the table's bare numbers
     */
    record Sizes(File make, File bodies, Optional<String> unit) implements Asked {
        @Override
        public Job.Kind kind() {
            return Job.Kind.SIZES;
        }

        @Override
        public long size() {
            return 1;
        }
    }

    /** A file as it was read. */
    record File(String name, byte[] bytes) {
        @Override
        public boolean equals(Object other) {
            return other instanceof File f && name.equals(f.name) && Arrays.equals(bytes, f.bytes);
        }

        @Override
        public int hashCode() {
            return 31 * name.hashCode() + Arrays.hashCode(bytes);
        }

        @Override
        public String toString() {
            return name + " (" + bytes.length + " bytes)";
        }
    }

    /** @throws BadInput where a job reads otherwise than this program writes it */
    static Asked of(Job job) {
        return AskedText.read(job);
    }

    private static void mustEnd(Effort effort) {
        if ((long) effort.explore() + effort.compress() > MOST_ROUNDS) {
            throw Tell.wrong(
                    "job",
                    "rounds",
                    Tell.said("job.rounds", Part.count(MOST_ROUNDS)),
                    Tell.said("job.rounds-help", Part.count(MOST_ROUNDS)));
        }
    }
}
