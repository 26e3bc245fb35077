package stretchwright.web.things;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.body.Measure;
import stretchwright.body.Side;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.ground.Said;
import stretchwright.intake.WearerKeys;
import stretchwright.web.door.Guard;
import stretchwright.web.form.Form;
import stretchwright.web.form.Trial;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Pages;
import stretchwright.web.frame.Screen;
import stretchwright.workroom.Taken;
import stretchwright.workroom.store.Kind;

/** Wearers: one measure at a time. */
public final class WearerScreen implements Screen {
    private final Bench bench;

    public WearerScreen(Bench bench) {
        this.bench = bench;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/wearers/new", ctx -> Pages.show(ctx, "thing.jte", NewThing.wearer(Form.empty(), List.of())));
        routes.post("/wearers/new", this::add);
        routes.get("/wearers/{id}", ctx -> show(ctx, held(ctx, Held.asker(ctx)), List.of()));
        routes.post("/wearers/{id}/unit", this::unit);
        routes.post("/wearers/{id}/today", this::today);
        routes.post("/wearers/{id}/consent", this::consent);
        routes.post("/wearers/{id}/forget", this::forget);
        routes.get(
                "/wearers/{id}/{measure}",
                ctx -> reading(ctx, MeasurePage.of(held(ctx, Held.asker(ctx)), measure(ctx))));
        routes.post("/wearers/{id}/{measure}/look", this::look);
        routes.post("/wearers/{id}/{measure}", this::take);
    }

    private Held held(Context ctx, String asker) {
        return Held.of(bench, ctx, Kind.WEARER, asker);
    }

    private static Measure measure(Context ctx) {
        return MeasurePage.at(ctx.pathParam("measure")).orElseThrow(NotFoundResponse::new);
    }

    private static void show(Context ctx, Held wearer, List<String> wrong) {
        ThingPage page = WearerPage.of(wearer);
        Pages.show(
                ctx, "thing.jte", wrong.isEmpty() ? page : page.refused(ctx.path(), new Form(Guard.form(ctx)), wrong));
    }

    private static void reading(Context ctx, ReadingPage page) {
        Pages.show(ctx, "reading.jte", page);
    }

    /** The same page with what the readings that are being typed mean; nothing is stored. */
    private void look(Context ctx) {
        Form sent = new Form(Guard.form(ctx));
        Held wearer = held(ctx, sent.value("for"));
        Measure measure = measure(ctx);
        Form now = SentReadings.changed(wearer.form(), measure, wearer.unit(), sent);
        reading(ctx, MeasurePage.of(wearer, measure, sent, wrong(wearer, measure, now)));
    }

    private void take(Context ctx) {
        Form sent = new Form(Guard.form(ctx));
        Held wearer = held(ctx, sent.value("for"));
        Measure measure = measure(ctx);
        Form now = SentReadings.changed(wearer.form(), measure, wearer.unit(), sent);
        List<Finding> wrong = wrong(wearer, measure, now);
        if (wrong.isEmpty()) {
            try {
                wearer.save("measure", dated(wearer, measure, now), sent.value("seen"));
                ctx.redirect(MeasurePage.of(wearer, measure).way().skip(), HttpStatus.SEE_OTHER);
                return;
            } catch (BadInput e) {
                wrong = e.findings();
            }
        }
        ctx.status(422);
        reading(ctx, MeasurePage.of(wearer, measure, sent, wrong));
    }

    /** What is the matter with this measure, or with others because of it. */
    private static List<Finding> wrong(Held wearer, Measure measure, Form now) {
        List<String> own = new ArrayList<>(List.of(SentReadings.key(measure)));
        for (Side side : Side.values()) {
            own.add(SentReadings.key(measure, side));
            own.add(SentReadings.hard(side));
        }
        boolean none = now.typed().keySet().stream().noneMatch(k -> k.startsWith("wearer.measurements."));
        List<Finding> found = none ? List.of() : Trial.wrong(now);
        if (found.isEmpty()) {
            return found;
        }
        List<Finding> before = Trial.wrong(wearer.form());
        return found.stream()
                .filter(f -> own.contains(f.key()) || before.stream().noneMatch(f::equals))
                .toList();
    }

    /** With the day since when all measures are as they are, so that nobody takes them for older than they are. */
    private Form dated(Held wearer, Measure measure, Form now) {
        if (now.typed().equals(wearer.form().typed())) {
            return now;
        }
        Map<Measure, LocalDate> days =
                new LinkedHashMap<>(Taken.of(bench.room(), wearer.thing()).days());
        days.put(measure, bench.room().today());
        Optional<LocalDate> oldest = days.entrySet().stream()
                .filter(e -> now.has(SentReadings.key(e.getKey())))
                .map(Map.Entry::getValue)
                .min(LocalDate::compareTo);
        return oldest.map(day -> now.with(Map.of(WearerKeys.MEASURED_ON.path(), day.toString())))
                .orElse(now);
    }

    private void unit(Context ctx) {
        Form sent = new Form(Guard.form(ctx));
        Held wearer = held(ctx, Held.asker(ctx));
        String unit = sent.value("unit").equals("in") ? "in" : "cm";
        wearer.save("measure", wearer.form().with(Map.of("unit", unit)), sent.value("seen"));
        ctx.redirect(wearer.to(""), HttpStatus.SEE_OTHER);
    }

    private void today(Context ctx) {
        Form sent = new Form(Guard.form(ctx));
        Held wearer = held(ctx, Held.asker(ctx));
        String today = bench.room().today().toString();
        wearer.save("measure", wearer.form().with(Map.of(WearerKeys.MEASURED_ON.path(), today)), sent.value("seen"));
        ctx.redirect(wearer.to(""), HttpStatus.SEE_OTHER);
    }

    private void consent(Context ctx) {
        Form sent = new Form(Guard.form(ctx));
        Held wearer = held(ctx, "");
        if (sent.value("agreed").isBlank()) {
            refused(ctx, wearer, Tell.said("things.consent-lack"));
            return;
        }
        String day = bench.room().today().toString();
        bench.room()
                .note(
                        wearer.thing(),
                        WearerPage.CONSENT,
                        day + ": " + sent.value("agreed").strip());
        ctx.redirect(wearer.to(""), HttpStatus.SEE_OTHER);
    }

    private void forget(Context ctx) {
        Form sent = new Form(Guard.form(ctx));
        Held wearer = held(ctx, "");
        if (!sent.value("name").strip().equalsIgnoreCase(wearer.thing().name().strip())) {
            refused(ctx, wearer, Tell.said("things.forget-other"));
            return;
        }
        bench.forget(wearer.thing());
        ctx.redirect("/", HttpStatus.SEE_OTHER);
    }

    private static void refused(Context ctx, Held wearer, Said why) {
        ctx.status(422);
        show(ctx, wearer, List.of(wearer.say(why)));
    }

    private void add(Context ctx) {
        Form sent = new Form(Guard.form(ctx));
        NewThing.add(bench, ctx, Kind.WEARER, sent);
    }
}
