package stretchwright.workroom.jobs;

import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.SchedulerName;
import com.github.kagkarlsson.scheduler.exceptions.ExecutionException;
import com.github.kagkarlsson.scheduler.logging.LogLevel;
import com.github.kagkarlsson.scheduler.task.CompletionHandler;
import com.github.kagkarlsson.scheduler.task.DeadExecutionHandler;
import com.github.kagkarlsson.scheduler.task.ExecutionComplete;
import com.github.kagkarlsson.scheduler.task.ExecutionOperations;
import com.github.kagkarlsson.scheduler.task.FailureHandler;
import com.github.kagkarlsson.scheduler.task.helper.CustomTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import java.time.Clock;
import java.time.Duration;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicBoolean;
import stretchwright.workroom.store.Database;

/**
 * Those who do the jobs of a database, until closed. Any number of programs may have theirs at one database: each job is with
 * one of them, who says that he lives every second; whose last word is older than some seconds is taken for dead, and
 * another goes on with his job. The clocks of the machines must not differ by more (else a job is done by two, and stored once).
 */
public final class Workers implements AutoCloseable {
    static final String TASK = "job";
    static final String TABLE = "job_queue";

    private static final Duration HEARTBEAT = Duration.ofSeconds(1);
    /** Heartbeats that may be late on a machine that has much to do. */
    private static final int MISSED = 5;

    private static final Duration LOOK = Duration.ofMillis(500);
    private static final Duration AGAIN = Duration.ofSeconds(5);
    /** For what is under way to notice that it is broken off. */
    private static final Duration PATIENCE = Duration.ofSeconds(10);
    /** A search has two workers of its own. */
    private static final int SEARCH = 2;

    private final AtomicBoolean closing;
    private final Scheduler scheduler;

    private Workers(AtomicBoolean closing, Scheduler scheduler) {
        this.closing = closing;
        this.scheduler = scheduler;
    }

    /** @param threads jobs that are done at the same time here; to be closed before the database */
    public static Workers start(Database database, int threads) {
        return start(database, threads, LaySpells.LONG);
    }

    static Workers start(Database database, int threads, int spell) {
        AtomicBoolean closing = new AtomicBoolean();
        Worker worker = new Worker(database, Clock.systemUTC(), threads == 1 ? SEARCH : 1, spell, closing::get);
        CustomTask<Void> task = Tasks.custom(TASK, Void.class)
                .onFailure(new FailureHandler.OnFailureRetryLater<>(AGAIN))
                .onDeadExecution(Workers::revive)
                .execute((job, context) -> after(worker.work(job.getId())));
        Scheduler scheduler = Scheduler.create(database.source(), task)
                .tableName(TABLE)
                .jdbcCustomization(new Millis())
                .schedulerName(new SchedulerName.Fixed(ProcessHandle.current().pid() + "-" + UUID.randomUUID()))
                .threads(threads)
                .pollingInterval(LOOK)
                .heartbeatInterval(HEARTBEAT)
                .missedHeartbeatsLimit(MISSED)
                .shutdownMaxWait(PATIENCE)
                .failureLogging(LogLevel.WARN, false)
                .build();
        scheduler.start();
        return new Workers(closing, scheduler);
    }

    /** Two who see that a third died may both want to put his job back; the first one does. */
    private static void revive(ExecutionComplete dead, ExecutionOperations<Void> operations) {
        try {
            new DeadExecutionHandler.ReviveDeadExecution<Void>().deadExecution(dead, operations);
        } catch (ExecutionException e) {
            return;
        }
    }

    /** Out of the queue, or into it again at its own place, before what was asked later, for who comes next. */
    private static CompletionHandler<Void> after(boolean nothingLeft) {
        return nothingLeft
                ? new CompletionHandler.OnCompleteRemove<>()
                : (complete, operations) -> operations.reschedule(complete, complete.getExecution().executionTime);
    }

    /** What is under way is left as it was last kept, for this program's next start or another's workers. */
    @Override
    public void close() {
        closing.set(true);
        scheduler.stop();
    }
}
