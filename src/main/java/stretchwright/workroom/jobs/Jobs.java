package stretchwright.workroom.jobs;

import java.time.Clock;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import stretchwright.ground.Document;
import stretchwright.ground.Part;
import stretchwright.workroom.store.Database;

/**
 * Long work that was asked, and what became of it.
 *
 * <p>In: what is to be done. Out: its state and files. Promise: a job that was added is done once by whoever works at the
 * same database ({@link Workers}), now or after the next start; it stands in the queue exactly as long as it is not over.
 */
public final class Jobs {
    private static final int LONGEST_NAME = 200;

    private final Database database;
    private final Clock clock;

    private Jobs(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    public static Jobs open(Database database) {
        return open(database, Clock.systemUTC());
    }

    static Jobs open(Database database, Clock clock) {
        return new Jobs(database, clock);
    }

    public Job add(String name, Asked asked) {
        return add(name, asked, Set.of());
    }

    /** @param about things of the store that it was asked for; where one of them is forgotten the job goes too */
    public Job add(String name, Asked asked, Set<String> about) {
        mustBeName(name);
        String input = AskedText.text(asked);
        return database.write(h -> {
            long number = 1
                    + h.createQuery("SELECT coalesce(max(number), 0) FROM job")
                            .mapTo(long.class)
                            .one();
            Job job = new Job(
                    UUID.randomUUID().toString(),
                    number,
                    asked.kind(),
                    name.strip(),
                    input,
                    Job.State.QUEUED,
                    0,
                    asked.size(),
                    0,
                    List.of(),
                    clock.millis(),
                    0,
                    0);
            JobRows.insert(h, job);
            JobRows.queue(h, job.id(), job.added());
            new LinkedHashSet<>(about).forEach(thing -> about(h, job.id(), thing));
            return job;
        });
    }

    private static void about(Handle h, String job, String thing) {
        h.createUpdate("INSERT INTO job_about (job, thing) VALUES (:job, :thing)")
                .bind("job", job)
                .bind("thing", thing)
                .execute();
    }

    private void mustBeName(String name) {
        boolean seen = !name.isBlank()
                && name.strip().length() <= LONGEST_NAME
                && name.codePoints()
                        .noneMatch(c -> Character.isISOControl(c) || Character.getType(c) == Character.SURROGATE);
        if (!seen) {
            throw Tell.wrong(
                    database.at().told(),
                    "name",
                    Tell.said("job.name", Part.count(LONGEST_NAME)),
                    Tell.said("name.give"));
        }
    }

    /** Newest first. */
    public List<Job> list(int most) {
        return database.read(h -> h.createQuery("SELECT * FROM job ORDER BY number DESC LIMIT :most")
                .bind("most", most)
                .map((row, context) -> JobRows.job(row))
                .list());
    }

    /** Those that were asked for a thing of the store, newest first. */
    public List<Job> about(String thing) {
        return database.read(h -> h.createQuery("SELECT job.* FROM job JOIN job_about ON job_about.job = job.id"
                        + " WHERE job_about.thing = :thing ORDER BY job.number DESC")
                .bind("thing", thing)
                .map((row, context) -> JobRows.job(row))
                .list());
    }

    /** How many that are not over were asked before that number. */
    public long before(long number) {
        return database.read(
                h -> h.createQuery("SELECT count(*) FROM job WHERE number < :number AND state IN ('queued', 'running')")
                        .bind("number", number)
                        .mapTo(long.class)
                        .one());
    }

    public Optional<Job> numbered(long number) {
        return database.read(h -> h.createQuery("SELECT * FROM job WHERE number = :number")
                .bind("number", number)
                .map((row, context) -> JobRows.job(row))
                .findOne());
    }

    public long count(Job.State state) {
        return database.read(h -> h.createQuery("SELECT count(*) FROM job WHERE state = :state")
                .bind("state", state.word())
                .mapTo(long.class)
                .one());
    }

    public Optional<Job> one(String id) {
        return database.read(h -> JobRows.one(h, id));
    }

    /** Of a job that is done all of them; of a lay that is not, the best so far; else none. */
    public List<Document> files(String id) {
        return database.read(h -> JobRows.files(h, id));
    }

    /**
     * Not done, or not to its end: what a lay has found so far stays. False where it is over already. Who works at it notices at
     * the end of his spell; a club's work is done and thrown away.
     */
    public boolean cancel(String id) {
        return database.write(h -> {
            need(h, id);
            boolean cancelled = JobRows.end(h, id, Job.State.CANCELLED, List.of(), clock.millis());
            if (cancelled) {
                JobRows.unqueue(h, id);
            }
            return cancelled;
        });
    }

    /** For good, with its files, and gone from the disk too. Who works at it throws his work away. */
    public void remove(String id) {
        database.write(h -> {
            JobRows.delete(h, need(h, id).id());
            database.owe(h);
            return true;
        });
        database.sweep();
    }

    /** For good: all that were asked for one of these things. Gives how many. To be done before the things are forgotten. */
    public int forget(Collection<String> things) {
        return database.write(h -> {
            Set<String> jobs = new LinkedHashSet<>();
            things.forEach(thing -> jobs.addAll(h.createQuery("SELECT job FROM job_about WHERE thing = :thing")
                    .bind("thing", thing)
                    .mapTo(String.class)
                    .list()));
            jobs.forEach(job -> JobRows.delete(h, job));
            return jobs.size();
        });
    }

    private Job need(Handle h, String id) {
        return JobRows.one(h, id)
                .orElseThrow(() -> Tell.wrong(
                        database.at().told(), "", Tell.said("job.none", Part.text(id)), Tell.said("job.list")));
    }
}
