package stretchwright.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.intake.MakeFile;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.StripInstance;
import stretchwright.many.BodyTable;
import stretchwright.report.Report;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.jobs.Asked;
import stretchwright.workroom.jobs.Job;
import stretchwright.workroom.jobs.Jobs;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Names;
import stretchwright.workroom.store.Thing;

/** Long work for later, or for another machine: a lay, a club, a table of sizes. */
@Command(name = "queue")
final class RoomQueue extends Task {
    /** As much as a lay of ten seconds explores and compresses on a common machine. */
    private static final Effort USUAL = new Effort(400, 100);

    @Parameters(paramLabel = "WHAT", index = "0", descriptionKey = "what")
    private String what = "";

    @Parameters(paramLabel = "FILE", index = "1..*", arity = "1..*", descriptionKey = "file")
    private List<String> files = List.of();

    @Option(names = "--bodies", paramLabel = "TABLE.csv")
    private @Nullable String bodies;

    @Option(names = "--unit", paramLabel = "U")
    private @Nullable String unit;

    @Option(names = "--table", paramLabel = "LENGTH")
    private @Nullable String table;

    @Option(names = "--name", paramLabel = "NAME")
    private @Nullable String name;

    @Mixin
    private SearchOptions search = new SearchOptions();

    private final Set<String> about = new LinkedHashSet<>();

    RoomQueue(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() throws IOException {
        Findings wrong = new Findings("queue");
        search.check(wrong);
        wrong.throwIfAny();
        Asked asked = switch (what) {
            case "lay" -> lay();
            case "club" -> club();
            case "sizes" -> sizes();
            default ->
                throw RoomThing.wrong("WHAT", Tell.said("job.what-asked", Tell.quoted(what)), Tell.said("job.numbers"));
        };
        Workroom room = named().madeRoom();
        Job job = Jobs.open(room.store().database()).add(name == null ? usual() : name, asked, about);
        console().tell(Tell.said("job.added", Part.count(job.number()), Part.text(job.name())));
        if (console().json()) {
            console().print(Report.text(RoomJobs.node(job, Report.node())));
        }
        return Exit.DONE;
    }

    private String usual() {
        return Names.within(files.get(0), Names.LONGEST, file -> what + " " + file);
    }

    private Effort effort() {
        return search.effort().orElse(USUAL);
    }

    private String one() {
        if (files.size() != 1) {
            throw RoomThing.wrong("FILE", Tell.said("job.one-file", Part.text(what)), Tell.said("job.numbers"));
        }
        return files.get(0);
    }

    private Asked lay() {
        Findings findings = new Findings(one());
        Optional<StripInstance> instance =
                Intake.read(one(), StripFile.LARGEST, findings).flatMap(bytes -> StripFile.read(bytes, findings));
        findings.throwIfAny();
        return new Asked.Lay(instance.orElseThrow(), search.seed(), effort());
    }

    private Asked club() {
        Findings findings = new Findings("club");
        OptionalDouble length =
                table == null ? OptionalDouble.empty() : ClubCommand.table(String.valueOf(table), findings);
        findings.throwIfAny();
        List<Asked.File> makes = new ArrayList<>();
        files.forEach(f -> makes.add(make(f)));
        return new Asked.Club(makes, length, search.seed(), effort());
    }

    private Asked sizes() {
        if (bodies == null) {
            throw RoomThing.wrong("--bodies", Tell.said("job.bodies"), Tell.said("job.numbers"));
        }
        Findings findings = new Findings(bodies);
        Optional<byte[]> rows = Intake.read(bodies, BodyTable.LARGEST, findings);
        findings.throwIfAny();
        return new Asked.Sizes(make(one()), new Asked.File(bodies, rows.orElseThrow()), Optional.ofNullable(unit));
    }

    private Asked.File make(String file) {
        named().make(file).map(Workroom.Stored::thing).ifPresent(this::note);
        Findings findings = new Findings(file);
        Optional<byte[]> bytes = named().read(file, MakeFile.LARGEST, findings);
        findings.throwIfAny();
        named().madeRoom().incoming(file, bytes.orElseThrow()).items().stream()
                .filter(i -> i.kind() == Kind.WEARER)
                .forEach(i -> i.there().ifPresent(wearer -> about.add(wearer.id())));
        return new Asked.File(file, bytes.orElseThrow());
    }

    /** So that the job is forgotten with its wearer. */
    private void note(Thing make) {
        about.add(make.id());
        about.addAll(make.links().all());
    }
}
