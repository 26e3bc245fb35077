package stretchwright.web.start;

import io.javalin.config.RoutesConfig;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Pages;
import stretchwright.web.frame.Screen;

/** The workroom: where did I stop? */
public final class StartScreen implements Screen {
    private final Bench bench;

    public StartScreen(Bench bench) {
        this.bench = bench;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/", ctx -> Pages.show(ctx, "start.jte", StartPage.of(bench)));
    }
}
