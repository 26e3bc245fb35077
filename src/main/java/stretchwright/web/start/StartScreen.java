package stretchwright.web.start;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Pages;
import stretchwright.web.frame.Screen;
import stretchwright.workroom.store.Kind;

/** The workroom: where did I stop? */
public final class StartScreen implements Screen {
    private final Bench bench;

    public StartScreen(Bench bench) {
        this.bench = bench;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/", ctx -> Pages.show(ctx, "start.jte", StartPage.of(bench)));
        routes.get("/machines", ctx -> Pages.show(ctx, "machines.jte", MachinesPage.of(bench)));
        for (Kind kind : List.of(Kind.MAKE, Kind.WEARER, Kind.FABRIC, Kind.BOOT)) {
            routes.get(ListPage.shelf(kind), ctx -> list(ctx, kind));
        }
    }

    private void list(Context ctx, Kind kind) {
        String from = Optional.ofNullable(ctx.queryParam("from"))
                .filter(f -> f.matches("[0-9]{1,6}"))
                .orElse("0");
        String sought = Optional.ofNullable(ctx.queryParam("sought")).orElse("");
        Pages.show(ctx, "list.jte", ListPage.of(bench, kind, sought, Integer.parseInt(from)));
    }
}
