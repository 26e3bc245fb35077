package stretchwright.workroom.jobs;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import stretchwright.ground.BadInput;
import stretchwright.ground.Document;
import stretchwright.ground.Finding;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.lay.Lay;
import stretchwright.lay.Placed;
import stretchwright.lay.nest.LayClock;
import stretchwright.workroom.store.Database;
import stretchwright.workroom.store.Store;

/**
 * Does one job to its end, or as far as it comes.
 *
 * <p>What it tells the database holds only where the job is not over and nobody was faster, so two who work at one job by
 * mistake do no harm. What the database itself cannot do is thrown, and the job stays in the queue; what cannot be computed
 * would not be the next time either, and is the job's end.
 */
final class Worker {
    /** So often a job is begun without coming on: then it may be what ends the program. */
    static final int MOST_TRIES = 20;

    private final Database database;
    private final Clock clock;
    private final int searchThreads;
    private final int spell;
    private final BooleanSupplier closing;

    /**
     * @param spell rounds of a lay after which it is kept
     * @param closing once true, what is under way is left as it was last kept
     */
    Worker(Database database, Clock clock, int searchThreads, int spell, BooleanSupplier closing) {
        this.database = database;
        this.clock = clock;
        this.searchThreads = searchThreads;
        this.spell = spell;
        this.closing = closing;
    }

    /** Why nothing can come of a job. */
    private static final class Failed extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final transient List<String> told;

        Failed(List<String> told, Throwable cause) {
            super(cause);
            this.told = told;
        }
    }

    /** True where nothing is left to do. */
    boolean work(String id) {
        Optional<Job> begun =
                database.write(h -> JobRows.begin(h, id, clock.millis()) ? JobRows.one(h, id) : Optional.<Job>empty());
        if (begun.isEmpty()) {
            return true;
        }
        if (begun.get().tries() > MOST_TRIES) {
            return end(id, Job.State.FAILED, told(Tell.said("job.tries", Part.count(MOST_TRIES))));
        }
        try {
            return switch (begun.get().kind()) {
                case LAY -> lay(begun.get());
                case PIECES -> pieces(begun.get());
                case CLUB, SIZES -> whole(begun.get());
            };
        } catch (Failed e) {
            return !closing.getAsBoolean() && end(id, Job.State.FAILED, e.told);
        }
    }

    private boolean lay(Job job) {
        Asked.Lay asked = computed(() -> (Asked.Lay) Asked.of(job));
        LaySpells spells = new LaySpells(asked, searchThreads, LayClock.of(closing, closing), spell);
        Optional<LaySpells.State> state = kept(job);
        while (true) {
            Optional<LaySpells.State> before = state;
            LaySpells.State next = computed(() -> spells.next(before));
            if (closing.getAsBoolean()) {
                return false;
            }
            List<Document> files = List.of(LaidText.document(asked.instance(), asked.seed(), next.best()));
            if (spells.over(next.reached())) {
                return end(job.id(), List.of(), files);
            }
            if (keep(job.id(), next.reached(), files)) {
                state = Optional.of(next);
            } else {
                Optional<Job> now = database.read(h -> JobRows.one(h, job.id()));
                if (now.isEmpty() || now.get().state().over()) {
                    return true;
                }
                state = kept(now.get());
            }
        }
    }

    /** As it was last kept, by whomever. */
    private Optional<LaySpells.State> kept(Job job) {
        if (job.reached() == 0) {
            return Optional.empty();
        }
        List<Document> files = database.read(h -> JobRows.files(h, job.id()));
        return Optional.of(computed(() -> new LaySpells.State(job.reached(), LaidText.read(files.get(0)))));
    }

    private boolean pieces(Job job) {
        Asked.Pieces asked = computed(() -> (Asked.Pieces) Asked.of(job));
        PieceSpells spells = computed(() -> new PieceSpells(asked, LayClock.of(closing, closing)));
        Job now = job;
        while (!now.state().over()) {
            Job before = now;
            Lay next = computed(() -> spells.next(start(before, spells), before.reached()));
            if (closing.getAsBoolean()) {
                return false;
            }
            long reached = spells.reached(next, before.reached());
            // around what a person pinned it need not be shorter than the usual lay
            Placed found = Placed.of(next).byHand(asked.from().byHand());
            List<Document> files = List.of(PlacedText.document(next.length(), found));
            if (reached >= job.asked()) {
                return kept(job, asked.cloth(), found) && end(job.id(), List.of(), files);
            }
            keep(job.id(), reached, files);
            // as it stands now: somebody may have stopped it, or come farther
            Optional<Job> again = database.read(h -> JobRows.one(h, job.id()));
            if (again.isEmpty()) {
                return true;
            }
            now = again.get();
        }
        return true;
    }

    private Lay start(Job job, PieceSpells spells) {
        return job.reached() == 0 ? spells.first() : spells.from(PlacedText.read(best(job)));
    }

    /** From then on it is the make's lay, where nobody stopped the search. */
    private boolean kept(Job job, int cloth, Placed lay) {
        boolean on = database.read(h -> JobRows.one(h, job.id()))
                .filter(j -> !j.state().over())
                .isPresent();
        if (on) {
            Store store = new Store(database, clock);
            database.read(h -> JobRows.about(h, job.id())).forEach(make -> KeptLays.keep(store, make, cloth, lay));
        }
        return true;
    }

    private Document best(Job job) {
        return database.read(h -> JobRows.files(h, job.id())).get(0);
    }

    private boolean whole(Job job) {
        Whole done = computed(() -> Whole.of(Asked.of(job), LayClock.of(closing, closing)));
        if (closing.getAsBoolean()) {
            return false;
        }
        return done.files().isEmpty()
                ? end(job.id(), Job.State.FAILED, done.told())
                : end(job.id(), done.told(), done.files());
    }

    private static <T> T computed(Supplier<T> work) {
        try {
            return work.get();
        } catch (BadInput e) {
            throw new Failed(e.findings().stream().map(Finding::line).toList(), e);
        } catch (RuntimeException e) {
            throw new Failed(told(Tell.said("job.fault", Part.text(e.toString()))), e);
        }
    }

    private static List<String> told(Said said) {
        return List.of(Voice.plain().say(said));
    }

    private boolean keep(String id, long reached, List<Document> files) {
        return database.write(h -> {
            boolean first = JobRows.comeOn(h, id, reached);
            if (first) {
                JobRows.files(h, id, files);
            }
            return first;
        });
    }

    private boolean end(String id, List<String> told, List<Document> files) {
        return database.write(h -> {
            if (JobRows.end(h, id, Job.State.DONE, told, clock.millis())) {
                JobRows.files(h, id, files);
            }
            return true;
        });
    }

    private boolean end(String id, Job.State state, List<String> told) {
        return database.write(h -> {
            JobRows.end(h, id, state, told, clock.millis());
            return true;
        });
    }
}
