package stretchwright.web.things;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.intake.Need;
import stretchwright.web.door.Guard;
import stretchwright.web.draw.BootMeasure;
import stretchwright.web.form.Form;
import stretchwright.web.form.Trial;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Pages;
import stretchwright.web.frame.Screen;
import stretchwright.workroom.store.Kind;

/** Boots, laced: one measure at a time. */
public final class BootScreen implements Screen {
    private final Bench bench;

    public BootScreen(Bench bench) {
        this.bench = bench;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/boots/new", ctx -> Pages.show(ctx, "thing.jte", NewThing.boot(Form.empty(), List.of())));
        routes.post("/boots/new", ctx -> NewThing.add(bench, ctx, Kind.BOOT, new Form(Guard.form(ctx))));
        routes.get("/boots/{id}", ctx -> show(ctx, held(ctx, Held.asker(ctx)), List.of()));
        routes.post("/boots/{id}/how", this::how);
        routes.get("/boots/{id}/{measure}", this::ask);
        routes.post("/boots/{id}/{measure}/look", this::look);
        routes.post("/boots/{id}/{measure}", this::take);
    }

    private Held held(Context ctx, String asker) {
        return Held.of(bench, ctx, Kind.BOOT, asker);
    }

    private static BootMeasure measure(Context ctx) {
        return BootPage.at(ctx.pathParam("measure")).orElseThrow(NotFoundResponse::new);
    }

    private static void show(Context ctx, Held boot, List<String> wrong) {
        ThingPage page = BootPage.of(boot);
        Pages.show(
                ctx, "thing.jte", wrong.isEmpty() ? page : page.refused(ctx.path(), new Form(Guard.form(ctx)), wrong));
    }

    private static void reading(Context ctx, ReadingPage page) {
        Pages.show(ctx, "reading.jte", page);
    }

    private void ask(Context ctx) {
        Held boot = held(ctx, Held.asker(ctx));
        BootMeasure measure = measure(ctx);
        String kept = Held.shown(boot.form().value(measure.path()), boot.unit());
        reading(ctx, BootPage.reading(boot, measure, kept, List.of()));
    }

    private void look(Context ctx) {
        Form sent = new Form(Guard.form(ctx));
        Held boot = held(ctx, sent.value("for"));
        BootMeasure measure = measure(ctx);
        List<Finding> wrong = wrong(boot, BootPage.changed(boot, measure, sent));
        reading(ctx, BootPage.reading(boot, measure, sent.value("reading"), wrong));
    }

    private void take(Context ctx) {
        Form sent = new Form(Guard.form(ctx));
        Held boot = held(ctx, sent.value("for"));
        BootMeasure measure = measure(ctx);
        Form now = BootPage.changed(boot, measure, sent);
        List<Finding> wrong = wrong(boot, now);
        if (wrong.isEmpty()) {
            try {
                boot.save("measure", now, sent.value("seen"));
                ctx.redirect(
                        BootPage.reading(boot, measure, "", List.of()).way().skip(), HttpStatus.SEE_OTHER);
                return;
            } catch (BadInput e) {
                wrong = e.findings();
            }
        }
        ctx.status(422);
        reading(ctx, BootPage.reading(boot, measure, sent.value("reading"), wrong));
    }

    /** What was not wrong before, and not what is lacking still. */
    private static List<Finding> wrong(Held boot, Form now) {
        List<Finding> before = found(boot.form());
        return found(now).stream()
                .filter(f -> before.stream().noneMatch(f::equals))
                .toList();
    }

    private static List<Finding> found(Form boot) {
        return Trial.boot(boot).stream()
                .filter(f -> f.key().startsWith("boot") && !Need.isLack(f.wrong()))
                .toList();
    }

    private void how(Context ctx) {
        Form sent = new Form(Guard.form(ctx));
        Held boot = held(ctx, Held.asker(ctx));
        Map<String, String> values = new LinkedHashMap<>();
        values.put("boot.kind", sent.value("boot.kind"));
        values.put("boot.dressing", sent.value("boot.dressing"));
        values.put("unit", sent.value("unit").equals("in") ? "in" : "cm");
        Form now = boot.form().with(values);
        List<Finding> wrong = wrong(boot, now);
        if (!wrong.isEmpty()) {
            ctx.status(422);
            show(ctx, boot, boot.words(wrong));
            return;
        }
        boot.save("change", now, sent.value("seen"));
        ctx.redirect(boot.to(""), HttpStatus.SEE_OTHER);
    }
}
