package stretchwright.web.draft;

import io.javalin.config.RoutesConfig;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Pages;
import stretchwright.web.frame.Screen;

/** Fit and measures of a make in numbers. */
public final class NumbersScreen implements Screen {
    private final Bench bench;

    public NumbersScreen(Bench bench) {
        this.bench = bench;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/makes/{id}/numbers", ctx -> Pages.show(ctx, "numbers.jte", NumbersPage.of(bench.make(ctx))));
    }
}
