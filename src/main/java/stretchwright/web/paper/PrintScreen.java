package stretchwright.web.paper;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Opened;
import stretchwright.web.frame.Pages;
import stretchwright.web.frame.Screen;

/** The papers of a make, in the order in which they are used. */
public final class PrintScreen implements Screen {
    private final Bench bench;

    public PrintScreen(Bench bench) {
        this.bench = bench;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/makes/{id}/print", this::show);
    }

    private void show(Context ctx) {
        Opened make = bench.make(ctx);
        Pages.show(ctx, "print.jte", bench.heavy(() -> PrintPage.of(make)));
    }
}
