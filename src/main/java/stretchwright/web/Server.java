package stretchwright.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.util.JavalinBindException;
import io.javalin.util.JavalinException;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import stretchwright.ground.BadInput;
import stretchwright.ground.Said;
import stretchwright.web.ask.AskScreen;
import stretchwright.web.club.ClubScreen;
import stretchwright.web.door.Door;
import stretchwright.web.door.Opening;
import stretchwright.web.door.Reach;
import stretchwright.web.door.Refusal;
import stretchwright.web.door.Streams;
import stretchwright.web.draft.AllScreen;
import stretchwright.web.draft.DraftScreen;
import stretchwright.web.draft.NumbersScreen;
import stretchwright.web.draft.SwapScreen;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Pages;
import stretchwright.web.frame.Screen;
import stretchwright.web.join.JoinScreen;
import stretchwright.web.lay.LayScreen;
import stretchwright.web.paper.FilesScreen;
import stretchwright.web.paper.PrintScreen;
import stretchwright.web.sew.SewScreen;
import stretchwright.web.start.StartScreen;
import stretchwright.web.things.BootScreen;
import stretchwright.web.things.ClothScreen;
import stretchwright.web.things.WearerScreen;
import stretchwright.web.worn.WornScreen;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.jobs.Workers;
import stretchwright.workroom.store.Address;

/**
 * The room's entry: the page, on the loopback address or shared.
 *
 * <p>In: a workroom's address, and where the page is to be had. Out: a running server with its address. Promise: what is pressed
 * becomes the text of a make file and goes the way of the make command, so the page knows no rule of its own.
 */
public final class Server {
    private static final int STOP_MILLIS = 2700;

    /** For who is being answered. */
    private static final int ANSWER_MILLIS = 1500;

    /** What the page's own files are, by their names. */
    private static final Map<String, String> OWN = Map.of(
            "icon.svg", "image/svg+xml",
            "look.css", "text/css",
            "live.js", "text/javascript",
            "lay.js", "text/javascript",
            "print.js", "text/javascript");

    private final Workroom room;
    private final Workers workers;
    private final Javalin app;
    private final Opening opening;
    private final Streams streams = new Streams();

    private Server(Workroom room, Opening opening, List<Screen> more) {
        this.room = room;
        this.opening = opening;
        this.workers = Workers.start(room.store().database(), 1);
        app = Javalin.create(c -> {
            c.jetty.host = opening.host();
            c.jetty.port = opening.port();
            c.jetty.modifyServer(PlainAnswers::use);
            c.jetty.modifyServer(s -> s.setStopTimeout(ANSWER_MILLIS));
            c.startup.showJavalinBanner = false;
            c.http.prefer405over404 = true;
            c.routes.beforeMatched(streams::note);
            open(c, new Bench(room), new Door(opening), more);
        });
    }

    /**
     * Starts for this machine alone; empty where the port cannot be had.
     *
     * @param port 0 for any free one
     * @throws BadInput where the workroom cannot be opened
     */
    public static Optional<Server> start(Address at, int port) {
        return start(at, Opening.here(port));
    }

    /**
     * Starts; empty where the port cannot be had.
     *
     * @throws BadInput where the workroom cannot be opened
     */
    public static Optional<Server> start(Address at, Opening opening) {
        return start(at, opening, List.of());
    }

    /** @param more screens */
    static Optional<Server> start(Address at, Opening opening, List<Screen> more) {
        if (!isFree(opening)) {
            return Optional.empty();
        }
        Server server = new Server(Workroom.open(at), opening, more);
        try {
            server.app.start();
            return Optional.of(server);
        } catch (JavalinBindException e) {
            server.stop();
            return Optional.empty();
        }
    }

    /** Asked before anything is begun; who takes it in the meantime is told of by Javalin too. */
    private static boolean isFree(Opening opening) {
        try (ServerSocket probe = new ServerSocket()) {
            probe.bind(new InetSocketAddress(opening.host(), opening.port()));
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    /** For this machine's own browser. */
    public String address() {
        return opening.own(app.port());
    }

    /** For other machines in the same network, most likely first; none where it is not shared. */
    public List<String> reach() {
        return Reach.addresses(opening, app.port());
    }

    /** What is under way is left as it was last kept; who still listens is cut off. */
    public void stop() {
        long end = System.nanoTime() + Duration.ofMillis(STOP_MILLIS).toNanos();
        Thread jobs = new Thread(workers::close, "jobs-end");
        jobs.setDaemon(true);
        jobs.start();
        streams.end();
        try {
            app.stop();
        } catch (JavalinException e) {
            return; // somebody was in the middle of sending or being answered, and is cut off
        } finally {
            ended(jobs, end);
            room.close();
        }
    }

    /** A job that takes longer to notice goes on, at the next start, from where it was last kept. */
    private static void ended(Thread jobs, long end) {
        try {
            jobs.join(Math.max(1, Duration.ofNanos(end - System.nanoTime()).toMillis()));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void open(JavalinConfig c, Bench bench, Door door, List<Screen> more) {
        LayScreen lay = new LayScreen(bench);
        c.events.serverStopping(lay::close);
        List<Screen> screens = List.of(
                new StartScreen(bench),
                new AskScreen(bench),
                new WornScreen(bench),
                new ClubScreen(bench),
                new WearerScreen(bench),
                new ClothScreen(bench),
                new BootScreen(bench),
                new DraftScreen(bench),
                new SwapScreen(bench),
                new AllScreen(bench),
                new NumbersScreen(bench),
                lay,
                new PrintScreen(bench),
                new SewScreen(bench),
                new FilesScreen(bench),
                new JoinScreen(door));
        c.routes.before(door::check);
        c.routes.beforeMatched(door::checkSeal);
        screens.forEach(s -> s.open(c.routes));
        more.forEach(s -> s.open(c.routes));
        OWN.forEach((name, type) -> c.routes.get("/" + name, ctx -> resource(ctx, name, type)));
        // beside a PDF a browser asks for this one of its own accord
        c.routes.get("/favicon.ico", ctx -> resource(ctx, "icon.svg", "image/svg+xml"));
        c.routes.get("/htmx.js", ctx -> packaged(ctx, "htmx.org/2.0.10/dist/htmx.min.js"));
        c.routes.get("/health", ctx -> ctx.contentType("application/json").result("{\"status\":\"up\"}"));
        answers(c.routes);
    }

    /** What is not as it should be, in plain words. */
    private static void answers(RoutesConfig routes) {
        routes.exception(BadInput.class, (e, ctx) -> {
            ctx.status(422);
            Pages.show(ctx, "plain.jte", PlainPage.of(e));
        });
        routes.error(403, ctx -> Pages.show(ctx, "plain.jte", PlainPage.of(Refusal.told(ctx))));
        plain(routes, 400, Tell.said("plain.400"), Tell.said("plain.400-help"));
        plain(routes, 404, Tell.said("plain.404"), Tell.said("plain.404-help"));
        plain(routes, 405, Tell.said("plain.405"), Tell.said("plain.405-help"));
        plain(routes, 408, Tell.said("plain.408"), Tell.said("plain.408-help"));
        plain(routes, 413, Tell.said("plain.413"), Tell.said("plain.413-help"));
        plain(routes, 415, Tell.said("plain.415"), Tell.said("plain.415-help"));
        plain(routes, 503, Tell.said("plain.503"), Tell.said("plain.503-help"));
        plain(routes, 500, Tell.said("plain.500"), Tell.said("plain.500-help"));
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
