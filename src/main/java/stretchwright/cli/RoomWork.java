package stretchwright.cli;

import java.util.concurrent.TimeUnit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import stretchwright.ground.Part;
import stretchwright.workroom.jobs.Job;
import stretchwright.workroom.jobs.Jobs;
import stretchwright.workroom.jobs.Workers;
import stretchwright.workroom.store.Database;

/** Does the jobs of the queue, until it is told to end; on a shared database beside others who do. */
@Command(name = "work")
final class RoomWork extends Task {
    private static final int MOST_THREADS = 64;
    private static final long LOOK_MILLIS = 300;

    @Option(names = "--threads", paramLabel = "T", defaultValue = "1")
    private int threads;

    @Option(names = "--until-empty")
    private boolean untilEmpty;

    RoomWork(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() throws InterruptedException {
        if (threads < 1 || threads > MOST_THREADS) {
            throw RoomThing.wrong(
                    "--threads",
                    Tell.said("threads.cannot", Part.count(threads)),
                    Tell.said("threads.to", Part.count(MOST_THREADS)));
        }
        Database database = named().room().store().database();
        Jobs jobs = Jobs.open(database);
        try (StopKey stop = new StopKey();
                Workers workers = Workers.start(database, threads)) {
            if (!untilEmpty) {
                console().warn(Tell.said("job.works"));
                console().err().flush();
            }
            while (!stop.asked() && !(untilEmpty && isEmpty(jobs))) {
                TimeUnit.MILLISECONDS.sleep(LOOK_MILLIS);
            }
        }
        if (untilEmpty && isEmpty(jobs)) {
            console().tell(Tell.said("job.worked"));
        }
        return Exit.DONE;
    }

    private static boolean isEmpty(Jobs jobs) {
        return jobs.count(Job.State.QUEUED) + jobs.count(Job.State.RUNNING) == 0;
    }
}
