package stretchwright.workroom.jobs;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import stretchwright.ground.Document;
import stretchwright.lay.Placed;
import stretchwright.lay.nest.Effort;

/**
 * The search for a shorter lay of one make on one cloth, as it stands.
 *
 * @param before jobs that have their turn before it, the one under way included; 0 once it has begun
 * @param best where the pieces lie by the shortest lay so far; empty before there is one
 * @param length of that, mm
 */
public record PieceSearch(Job job, Asked.Pieces asked, long before, Optional<Placed> best, double length) {
    /** Some minutes of work: of one garment nothing was found later, where it was tried. */
    private static final Effort MOST = new Effort(7200, 2400);

    /** The newest that was asked for a make and one of its cloths. */
    public static Optional<PieceSearch> newest(Jobs jobs, String make, int cloth) {
        for (Job job : jobs.about(make)) {
            if (job.kind() == Job.Kind.PIECES
                    && Asked.of(job) instanceof Asked.Pieces asked
                    && asked.cloth() == cloth) {
                return Optional.of(of(jobs, job, asked));
            }
        }
        return Optional.empty();
    }

    private static PieceSearch of(Jobs jobs, Job job, Asked.Pieces asked) {
        List<Document> files = jobs.files(job.id());
        long before = job.state() == Job.State.QUEUED ? jobs.before(job.number()) : 0;
        return files.isEmpty()
                ? new PieceSearch(job, asked, before, Optional.empty(), 0)
                : new PieceSearch(
                        job,
                        asked,
                        before,
                        Optional.of(PlacedText.read(files.get(0))),
                        PlacedText.length(files.get(0)));
    }

    /** Into the queue; looking once more looks elsewhere. */
    public static Job ask(
            Jobs jobs, String name, String make, String text, int cloth, Placed from, Set<String> pinned) {
        Asked.File file = new Asked.File(name, text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
        long seed = 1 + jobs.about(make).size();
        return jobs.add(name, new Asked.Pieces(file, cloth, from, pinned, seed, MOST), Set.of(make));
    }

    public boolean over() {
        return job.state().over();
    }

    /** Whether it is the one for this text: of a text that was changed since, it may find lays that do not hold. */
    public boolean of(String text) {
        return new String(asked.make().bytes(), java.nio.charset.StandardCharsets.UTF_8).equals(text);
    }
}
