package stretchwright.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stretchwright.ground.Document;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.make.Made;
import stretchwright.report.Report;
import stretchwright.workroom.jobs.Job;
import stretchwright.workroom.jobs.Jobs;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What is in the queue and what became of it; the files of one job, or its end. */
@Command(name = "jobs")
final class RoomJobs extends Task {
    private static final int MOST = 1000;

    /** 0 for all of them. */
    @Parameters(paramLabel = "N", arity = "0..1", descriptionKey = "number")
    private long number;

    @Option(names = "--out", paramLabel = "DIR")
    private @Nullable String out;

    @Option(names = "--cancel")
    private boolean cancel;

    @Option(names = "--forget")
    private boolean forget;

    RoomJobs(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() throws IOException {
        if (number == 0 && (out != null || cancel || forget)) {
            throw RoomThing.wrong("N", Tell.said("job.which"), Tell.said("job.numbers"));
        }
        Findings aboutOut = new Findings(String.valueOf(out));
        Optional<OutFolder> folder = out == null ? Optional.empty() : folder(out, aboutOut);
        aboutOut.throwIfAny();
        Jobs jobs = Jobs.open(named().room().store().database());
        if (number == 0) {
            return listed(jobs.list(MOST));
        }
        Job job = jobs.numbered(number)
                .orElseThrow(() ->
                        RoomThing.wrong("N", Tell.said("job.no-number", Part.count(number)), Tell.said("job.numbers")));
        if (forget) {
            jobs.remove(job.id());
            console().tell(Tell.said("job.forgotten", Part.count(job.number())));
            return Exit.DONE;
        }
        if (cancel) {
            console()
                    .tell(
                            jobs.cancel(job.id())
                                    ? Tell.said("job.cancelled", Part.count(job.number()))
                                    : Tell.said(
                                            "job.over",
                                            Part.count(job.number()),
                                            Part.text(job.state().word())));
            return Exit.DONE;
        }
        tell(job);
        if (console().json()) {
            console().print(Report.text(node(job, Report.node())));
        }
        if (folder.isPresent()) {
            write(job, jobs.files(job.id()), folder.get());
        }
        return job.state() == Job.State.FAILED ? Exit.INPUT : Exit.DONE;
    }

    private int listed(List<Job> all) {
        if (all.isEmpty()) {
            console().tell(Tell.said("job.none-there"));
        }
        all.forEach(this::tell);
        if (console().json()) {
            ObjectNode root = Report.node();
            ArrayNode list = root.putArray("jobs");
            all.forEach(j -> node(j, list.addObject()));
            console().print(Report.text(root));
        }
        return Exit.DONE;
    }

    static ObjectNode node(Job job, ObjectNode out) {
        out.put("number", job.number())
                .put("kind", job.kind().word())
                .put("name", job.name())
                .put("state", job.state().word())
                .put("reached", job.reached())
                .put("asked", job.asked());
        ArrayNode told = out.putArray("told");
        job.told().forEach(told::add);
        return out;
    }

    private void tell(Job job) {
        Part way = job.kind().inRounds()
                ? Tell.said("job.of", Part.count(job.reached()), Part.count(job.asked()))
                : Part.text("");
        console()
                .tell(Tell.said(
                        "job.line",
                        Part.count(job.number()),
                        Part.text(job.state().word()),
                        Part.text(job.name()),
                        way));
        job.told().forEach(line -> console().tell("    " + line));
    }

    private void write(Job job, List<Document> files, OutFolder folder) throws IOException {
        if (files.isEmpty()) {
            throw RoomThing.wrong(
                    "--out",
                    Tell.said("job.not-done", Part.count(job.number())),
                    Tell.said("job.wait", Part.text(job.state().word())));
        }
        folder.write(files);
        console().about(Made.COLUMN, Tell.said("label.files"), Part.text(String.valueOf(out)));
    }
}
