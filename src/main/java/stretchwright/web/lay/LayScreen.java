package stretchwright.web.lay;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Opened;
import stretchwright.web.frame.Pages;
import stretchwright.web.frame.Screen;

/** The lay of a make. */
public final class LayScreen implements Screen {
    private final Bench bench;

    public LayScreen(Bench bench) {
        this.bench = bench;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/makes/{id}/lay", this::show);
    }

    private void show(Context ctx) {
        Opened make = bench.make(ctx);
        Pages.show(ctx, "lay.jte", bench.heavy(() -> LayPage.of(make)));
    }
}
