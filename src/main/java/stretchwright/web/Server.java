package stretchwright.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.util.JavalinBindException;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import stretchwright.ground.BadInput;
import stretchwright.ground.Said;
import stretchwright.web.ask.AskScreen;
import stretchwright.web.door.Guard;
import stretchwright.web.draft.AllScreen;
import stretchwright.web.draft.DraftScreen;
import stretchwright.web.draft.NumbersScreen;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Pages;
import stretchwright.web.frame.Screen;
import stretchwright.web.lay.LayScreen;
import stretchwright.web.paper.FilesScreen;
import stretchwright.web.paper.PrintScreen;
import stretchwright.web.sew.SewScreen;
import stretchwright.web.start.StartScreen;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.jobs.Workers;
import stretchwright.workroom.store.Address;

/**
 * The room's entry: the page on the loopback address.
 *
 * <p>In: a workroom's address and a port, 0 for any free one. Out: a running server with its address. Promise: what is pressed
 * becomes the text of a make file and goes the way of the make command, so the page knows no rule of its own.
 */
public final class Server {
    private static final int STOP_MILLIS = 3000;

    /** What the page's own files are, by their names. */
    private static final Map<String, String> OWN = Map.of(
            "look.css", "text/css",
            "live.js", "text/javascript",
            "lay.js", "text/javascript");

    private final Workroom room;
    private final Workers workers;
    private final Javalin app;

    private Server(Workroom room, int port) {
        this.room = room;
        this.workers = Workers.start(room.store().database(), 1);
        app = Javalin.create(c -> {
            c.jetty.host = "127.0.0.1";
            c.jetty.port = port;
            c.jetty.modifyServer(s -> s.setStopTimeout(STOP_MILLIS));
            c.startup.showJavalinBanner = false;
            c.http.prefer405over404 = true;
            open(c, new Bench(room));
        });
    }

    /**
     * Starts; empty where the port cannot be had.
     *
     * @throws BadInput where the workroom cannot be opened
     */
    public static Optional<Server> start(Address at, int port) {
        Server server = new Server(Workroom.open(at), port);
        try {
            server.app.start();
            return Optional.of(server);
        } catch (JavalinBindException e) {
            server.stop();
            return Optional.empty();
        }
    }

    public String address() {
        return "http://127.0.0.1:" + app.port() + "/";
    }

    /** What is under way is left as it was last kept. */
    public void stop() {
        app.stop();
        workers.close();
        room.close();
    }

    private static void open(JavalinConfig c, Bench bench) {
        LayScreen lay = new LayScreen(bench);
        c.events.serverStopping(lay::close);
        List<Screen> screens = List.of(
                new StartScreen(bench),
                new AskScreen(bench),
                new DraftScreen(bench),
                new AllScreen(bench),
                new NumbersScreen(bench),
                lay,
                new PrintScreen(bench),
                new SewScreen(bench),
                new FilesScreen(bench));
        c.routes.before(Guard::check);
        screens.forEach(s -> s.open(c.routes));
        OWN.forEach((name, type) -> c.routes.get("/" + name, ctx -> resource(ctx, name, type)));
        c.routes.get("/htmx.js", ctx -> packaged(ctx, "htmx.org/2.0.10/dist/htmx.min.js"));
        c.routes.get("/health", ctx -> ctx.json(Map.of("status", "up")));
        c.routes.exception(BadInput.class, (e, ctx) -> {
            ctx.status(422);
            Pages.show(ctx, "plain.jte", PlainPage.of(e));
        });
        plain(c.routes, 400, Tell.said("plain.400"), Tell.said("plain.400-help"));
        plain(c.routes, 403, Tell.said("plain.403"), Tell.said("plain.403-help"));
        plain(c.routes, 404, Tell.said("plain.404"), Tell.said("plain.404-help"));
        plain(c.routes, 405, Tell.said("plain.405"), Tell.said("plain.405-help"));
        plain(c.routes, 408, Tell.said("plain.408"), Tell.said("plain.408-help"));
        plain(c.routes, 413, Tell.said("plain.413"), Tell.said("plain.413-help"));
        plain(c.routes, 503, Tell.said("plain.503"), Tell.said("plain.503-help"));
        plain(c.routes, 500, Tell.said("plain.500"), Tell.said("plain.500-help"));
    }

    private static void plain(RoutesConfig routes, int status, Said title, Said words) {
        routes.error(status, ctx -> Pages.show(ctx, "plain.jte", PlainPage.of(title, words)));
    }

    private static void resource(Context ctx, String name, String type) throws IOException {
        sent(ctx, "/stretchwright/web/" + name, type);
    }

    /** Of a library that comes as a package of files for browsers. */
    private static void packaged(Context ctx, String path) throws IOException {
        sent(ctx, "/META-INF/resources/webjars/" + path, "text/javascript");
    }

    private static void sent(Context ctx, String path, String type) throws IOException {
        try (InputStream in = Objects.requireNonNull(Server.class.getResourceAsStream(path))) {
            ctx.contentType(type + "; charset=utf-8").result(in.readAllBytes());
        }
    }
}
