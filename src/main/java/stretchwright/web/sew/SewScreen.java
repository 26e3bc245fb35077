package stretchwright.web.sew;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.ground.Document;
import stretchwright.web.door.Guard;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Opened;
import stretchwright.web.frame.Pages;
import stretchwright.web.frame.Screen;

/** The sewing plan of a make, a step at a time. */
public final class SewScreen implements Screen {
    private final Bench bench;

    public SewScreen(Bench bench) {
        this.bench = bench;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/sew.js", ctx -> Offline.script(ctx, "sew.js"));
        routes.get("/makes/{id}/sew", this::place);
        routes.get("/makes/{id}/sew/all", this::all);
        routes.get("/makes/{id}/sew/pages.json", this::pages);
        routes.get("/makes/{id}/sew/worker.js", ctx -> Offline.worker(ctx, bench.make(ctx)));
        routes.get("/makes/{id}/sew/{step}", this::step);
        routes.get("/makes/{id}/sew/{step}/picture.svg", this::picture);
        routes.post("/makes/{id}/sew/{step}/done", this::done);
        routes.post("/makes/{id}/sew/{step}/here", this::here);
    }

    private Place place(Opened make) {
        return bench.heavy(() -> new Place(bench.room().store(), make));
    }

    /** Where it was left; at the end, all of it. */
    private void place(Context ctx) {
        Opened make = bench.make(ctx);
        Place place = place(make);
        int done = place.done();
        if (done == place.stops().size()) {
            showAll(ctx, make, place);
        } else {
            show(ctx, make, place, done);
        }
    }

    private void all(Context ctx) {
        Opened make = bench.make(ctx);
        showAll(ctx, make, place(make));
    }

    private void pages(Context ctx) {
        Opened make = bench.make(ctx);
        Place place = place(make);
        bench.heavy(() -> {
            Offline.pages(ctx, make, place.stops());
            return ctx;
        });
    }

    private void step(Context ctx) {
        Opened make = bench.make(ctx);
        Place place = place(make);
        Stop stop = place.stop(ctx.pathParam("step")).orElseThrow(NotFoundResponse::new);
        show(ctx, make, place, place.stops().indexOf(stop));
    }

    private void picture(Context ctx) {
        Opened make = bench.make(ctx);
        String step = ctx.pathParam("step");
        Document drawn = bench.heavy(() -> Optional.of(step)
                .filter(s -> s.matches("[0-9]{1,3}"))
                .flatMap(s -> make.session().step(Integer.parseInt(s)))
                .orElseThrow(NotFoundResponse::new));
        // the drawing carries its own styles
        ctx.header("Content-Security-Policy", "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'");
        ctx.contentType("image/svg+xml").result(drawn.bytes());
    }

    private void show(Context ctx, Opened make, Place place, int at) {
        Pages.show(ctx, "sew.jte", bench.heavy(() -> SewPage.of(make, place, at)));
    }

    private void showAll(Context ctx, Opened make, Place place) {
        Pages.show(ctx, "sew-all.jte", bench.heavy(() -> AllPage.of(make, place)));
    }

    /** What is sent is the step that was seen, by its name: after a change of the plan it may stand elsewhere. */
    private void done(Context ctx) {
        Opened make = bench.make(ctx);
        Place place = place(make);
        Stop stop = meant(ctx, place);
        place.done(stop);
        int next = place.stops().indexOf(stop) + 1;
        String on = next < place.stops().size() ? "/" + place.stops().get(next).key() : "/all";
        ctx.redirect(make.address() + "/sew" + on, HttpStatus.SEE_OTHER);
    }

    private void here(Context ctx) {
        Opened make = bench.make(ctx);
        Place place = place(make);
        Stop stop = meant(ctx, place);
        place.goOnFrom(stop);
        ctx.redirect(make.address() + "/sew/" + stop.key(), HttpStatus.SEE_OTHER);
    }

    private static Stop meant(Context ctx, Place place) {
        Map<String, List<String>> sent = Guard.form(ctx);
        String name = sent.getOrDefault("name", List.of("")).get(0);
        return place.meant(ctx.pathParam("step"), name).orElseThrow(NotFoundResponse::new);
    }
}
