package stretchwright.web.sew;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
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
        routes.get("/makes/{id}/sew", ctx -> show(ctx, 1));
        routes.get("/makes/{id}/sew/{step}", ctx -> show(ctx, step(ctx.pathParam("step"))));
    }

    private static int step(String typed) {
        if (!typed.matches("[0-9]{1,3}")) {
            throw new NotFoundResponse();
        }
        return Integer.parseInt(typed);
    }

    private void show(Context ctx, int step) {
        Opened make = bench.make(ctx);
        int last = bench.heavy(() -> make.session().sewing().operations().size());
        if (step < 1 || step > last) {
            throw new NotFoundResponse();
        }
        Pages.show(ctx, "sew.jte", SewPage.of(make, step));
    }
}
