package stretchwright.web.club;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import stretchwright.ground.BadInput;
import stretchwright.ground.Document;
import stretchwright.ground.Finding;
import stretchwright.ground.Part;
import stretchwright.ground.Quantities;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.intake.OneRoll;
import stretchwright.lay.nest.Effort;
import stretchwright.make.Make;
import stretchwright.many.Club;
import stretchwright.web.door.Guard;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Pages;
import stretchwright.web.frame.Screen;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.jobs.Asked;
import stretchwright.workroom.jobs.Job;
import stretchwright.workroom.jobs.Jobs;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Thing;

/** Makes laid together as a job of the workroom. */
public final class ClubScreen implements Screen {
    /** As the queue of the command takes where nothing else is asked. */
    private static final Effort USUAL = new Effort(400, 100);

    private static final double SHORTEST_TABLE = 200;
    private static final double LONGEST_TABLE = 100_000;

    private static final Map<String, String> TYPES =
            Map.of("svg", "image/svg+xml", "pdf", "application/pdf", "json", "application/json");

    private final Bench bench;
    private final Jobs jobs;

    public ClubScreen(Bench bench) {
        this.bench = bench;
        this.jobs = Jobs.open(bench.room().store().database());
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/club", ctx -> show(ctx, Form.empty(), List.of()));
        routes.post("/club", this::lay);
        routes.get("/club/{id}", ctx -> Pages.show(ctx, "clubjob.jte", ClubJob.of(jobs, job(ctx))));
        routes.post("/club/{id}/stop", this::stop);
        routes.get("/club/{id}/file/{name}", this::file);
    }

    private void show(Context ctx, Form sent, List<String> wrong) {
        Pages.show(ctx, "club.jte", ClubPage.of(bench, jobs, sent, wrong));
    }

    private Job job(Context ctx) {
        return jobs.one(ctx.pathParam("id"))
                .filter(j -> j.kind() == Job.Kind.CLUB)
                .orElseThrow(NotFoundResponse::new);
    }

    private void lay(Context ctx) {
        Form sent = new Form(Guard.form(ctx));
        try {
            Set<String> about = new LinkedHashSet<>();
            List<Asked.File> files = files(sent, about);
            OptionalDouble table = table(sent.value("table"));
            mustBeOnOneRoll(files);
            String name = ClubPage.said("club.name", Part.count(files.size()));
            Job job = jobs.add(name, new Asked.Club(files, table, 1, USUAL), about);
            ctx.redirect("/club/" + job.id(), HttpStatus.SEE_OTHER);
        } catch (BadInput e) {
            ctx.status(422);
            show(ctx, sent, words(e.findings()));
        }
    }

    private static List<String> words(List<Finding> findings) {
        return findings.stream()
                .map(f -> f.file() + ": " + f.told(Voice.of(f.unit())))
                .distinct()
                .toList();
    }

    /** The ticked makes, on the chosen cloth or on their own. */
    private List<Asked.File> files(Form sent, Set<String> about) {
        List<String> ticked = sent.typed().getOrDefault("make", List.of());
        if (ticked.isEmpty() || ticked.size() > Club.MOST) {
            throw wrong(ticked.isEmpty() ? Tell.said("club.none") : Tell.said("club.many", Part.count(Club.MOST)));
        }
        Optional<Thing> cloth =
                sent.value("cloth").isBlank() ? Optional.empty() : Optional.of(here(sent.value("cloth"), Kind.FABRIC));
        List<Asked.File> out = new ArrayList<>();
        for (String id : ticked) {
            Thing make = here(id, Kind.MAKE);
            Workroom.Stored stored = new Workroom.Stored(make, bench.room().standing(make));
            String text = cloth.map(c -> bench.room().with(stored, c))
                    .orElse(stored.version().text());
            about.add(id);
            about.addAll(make.links().all());
            out.add(new Asked.File(make.name(), text.getBytes(StandardCharsets.UTF_8)));
        }
        return out;
    }

    private Thing here(String id, Kind kind) {
        return bench.room()
                .store()
                .thing(id)
                .filter(t -> t.kind() == kind && t.place() == Place.HERE)
                .orElseThrow(NotFoundResponse::new);
    }

    private static OptionalDouble table(String typed) {
        if (typed.isBlank()) {
            return OptionalDouble.empty();
        }
        OptionalDouble mm = Quantities.length(typed, Unit.M);
        if (mm.isEmpty() || mm.getAsDouble() < SHORTEST_TABLE || mm.getAsDouble() > LONGEST_TABLE) {
            throw wrong(Tell.said("club.no-table"));
        }
        return mm;
    }

    private static void mustBeOnOneRoll(List<Asked.File> files) {
        List<MakeFile> makes =
                files.stream().map(f -> Make.read(f.name(), f.bytes())).toList();
        List<Finding> wrong = OneRoll.findings(makes);
        if (!wrong.isEmpty()) {
            throw new BadInput(wrong);
        }
    }

    private static BadInput wrong(Said said) {
        return new BadInput(List.of(new Finding(ClubPage.said("club.heading"), "", 0, said, Said.NOTHING, Unit.CM)));
    }

    private void stop(Context ctx) {
        Guard.form(ctx);
        Job job = job(ctx);
        jobs.cancel(job.id());
        ctx.redirect("/club/" + job.id(), HttpStatus.SEE_OTHER);
    }

    private void file(Context ctx) {
        String name = ctx.pathParam("name");
        Document document = jobs.files(job(ctx).id()).stream()
                .filter(d -> d.name().equals(name))
                .findFirst()
                .orElseThrow(NotFoundResponse::new);
        if (name.endsWith(".svg")) {
            // the drawing carries its own styles
            ctx.header(
                    "Content-Security-Policy", "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'");
        }
        ctx.contentType(TYPES.getOrDefault(name.substring(name.lastIndexOf('.') + 1), "application/octet-stream"))
                .result(document.bytes());
    }
}
