package stretchwright.workroom.jobs;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import stretchwright.ground.Document;

/** Rows of jobs as values, and back. */
final class JobRows {
    private JobRows() {}

    static Job job(ResultSet row) throws SQLException {
        return new Job(
                row.getString("id"),
                row.getLong("number"),
                Job.Kind.of(row.getString("kind")).orElseThrow(),
                row.getString("name"),
                row.getString("input"),
                Job.State.of(row.getString("state")).orElseThrow(),
                row.getLong("reached"),
                row.getLong("asked"),
                row.getInt("tries"),
                row.getString("told").lines().toList(),
                row.getLong("added"),
                row.getLong("begun"),
                row.getLong("ended"));
    }

    static Optional<Job> one(Handle h, String id) {
        return h.createQuery("SELECT * FROM job WHERE id = :id")
                .bind("id", id)
                .map((row, context) -> job(row))
                .findOne();
    }

    /** The things that it was asked for. */
    static List<String> about(Handle h, String id) {
        return h.createQuery("SELECT thing FROM job_about WHERE job = :id ORDER BY thing")
                .bind("id", id)
                .mapTo(String.class)
                .list();
    }

    static void insert(Handle h, Job job) {
        h.createUpdate(
                        "INSERT INTO job (id, number, kind, name, input, state, reached, asked, tries, told, added, begun, ended)"
                                + " VALUES (:id, :number, :kind, :name, :input, :state, :reached, :asked, :tries, :told, :added,"
                                + " :begun, :ended)")
                .bind("id", job.id())
                .bind("number", job.number())
                .bind("kind", job.kind().word())
                .bind("name", job.name())
                .bind("input", job.input())
                .bind("state", job.state().word())
                .bind("reached", job.reached())
                .bind("asked", job.asked())
                .bind("tries", job.tries())
                .bind("told", String.join("\n", job.told()))
                .bind("added", job.added())
                .bind("begun", job.begun())
                .bind("ended", job.ended())
                .execute();
    }

    /** For the library that shares the queue: due from a time on. */
    static void queue(Handle h, String id, long due) {
        h.createUpdate("INSERT INTO " + Workers.TABLE + " (task_name, task_instance, execution_time, picked,"
                        + " consecutive_failures, version) VALUES (:task, :id, :due, :picked, 0, 1)")
                .bind("task", Workers.TASK)
                .bind("id", id)
                .bind("due", due)
                .bind("picked", false)
                .execute();
    }

    static void unqueue(Handle h, String id) {
        h.createUpdate("DELETE FROM " + Workers.TABLE + " WHERE task_name = :task AND task_instance = :id")
                .bind("task", Workers.TASK)
                .bind("id", id)
                .execute();
    }

    /** False where it was over already. */
    static boolean begin(Handle h, String id, long at) {
        return h.createUpdate("UPDATE job SET state = 'running', tries = tries + 1,"
                                + " begun = CASE WHEN begun = 0 THEN :at ELSE begun END"
                                + " WHERE id = :id AND state IN ('queued', 'running')")
                        .bind("id", id)
                        .bind("at", at)
                        .execute()
                > 0;
    }

    /** False where it was over already, or somebody else had come as far. */
    static boolean comeOn(Handle h, String id, long reached) {
        return h.createUpdate("UPDATE job SET reached = :reached, tries = 0"
                                + " WHERE id = :id AND state = 'running' AND reached < :reached")
                        .bind("id", id)
                        .bind("reached", reached)
                        .execute()
                > 0;
    }

    /** False where it was over already: what ended is never changed again. */
    static boolean end(Handle h, String id, Job.State state, List<String> told, long at) {
        return h.createUpdate("UPDATE job SET state = :state, told = :told, ended = :at, tries = 0,"
                                + " reached = CASE WHEN :done THEN asked ELSE reached END"
                                + " WHERE id = :id AND state IN ('queued', 'running')")
                        .bind("id", id)
                        .bind("state", state.word())
                        .bind("done", state == Job.State.DONE)
                        .bind("told", String.join("\n", told))
                        .bind("at", at)
                        .execute()
                > 0;
    }

    static List<Document> files(Handle h, String id) {
        return h.createQuery("SELECT name, kind, pages, bytes FROM job_file WHERE job = :id ORDER BY part")
                .bind("id", id)
                .map((row, context) -> new Document(
                        row.getString("name"), row.getString("kind"), row.getInt("pages"), row.getBytes("bytes")))
                .list();
    }

    /** Instead of those that were there. */
    static void files(Handle h, String id, List<Document> files) {
        delete(h, "job_file", "job", id);
        for (int i = 0; i < files.size(); i++) {
            Document file = files.get(i);
            h.createUpdate("INSERT INTO job_file (job, part, name, kind, pages, bytes)"
                            + " VALUES (:job, :part, :name, :kind, :pages, :bytes)")
                    .bind("job", id)
                    .bind("part", i)
                    .bind("name", file.name())
                    .bind("kind", file.kind())
                    .bind("pages", file.pages())
                    .bind("bytes", file.bytes())
                    .execute();
        }
    }

    static void delete(Handle h, String id) {
        unqueue(h, id);
        delete(h, "job_file", "job", id);
        delete(h, "job_about", "job", id);
        delete(h, "job", "id", id);
    }

    private static void delete(Handle h, String table, String column, String id) {
        h.createUpdate("DELETE FROM " + table + " WHERE " + column + " = :id")
                .bind("id", id)
                .execute();
    }
}
