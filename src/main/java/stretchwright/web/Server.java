package stretchwright.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import io.javalin.util.JavalinBindException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import stretchwright.ground.BadInput;
import stretchwright.ground.Document;
import stretchwright.ground.Finding;
import stretchwright.ground.Said;
import stretchwright.intake.MakeFile;
import stretchwright.intake.Table;
import stretchwright.make.Made;
import stretchwright.make.Make;
import stretchwright.make.Session;
import stretchwright.report.Report;

/**
 * The room's entry: the page on the loopback address.
 *
 * <p>In: a port, 0 for any free one. Out: a running server with its address. Promise: the form becomes the text of a
 * make file and goes the way of the make command, so the page knows no rule of its own; nothing is written to disk.
 */
public final class Server {
    /** Kinds of files by the ends of their names, as registered with IANA. */
    private static final Map<String, String> TYPES = Map.of(
            "svg", "image/svg+xml",
            "pdf", "application/pdf",
            "html", "text/html; charset=utf-8",
            "png", "image/png",
            "dxf", "image/vnd.dxf",
            "plt", "application/vnd.hp-HPGL");

    private static final int STOP_MILLIS = 3000;

    /** A press is answered with the result where it comes within this time; later ones with a page that waits. */
    private static final long PATIENCE_MILLIS = 4000;

    private static final long LOOK_MILLIS = 900;

    private final Makes makes = new Makes();
    private final TemplateEngine pages =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "stretchwright.web.pages");
    private final Javalin app;

    private Server(int port) {
        app = Javalin.create(c -> {
            c.jetty.host = "127.0.0.1";
            c.jetty.port = port;
            c.jetty.modifyServer(s -> s.setStopTimeout(STOP_MILLIS));
            c.startup.showJavalinBanner = false;
            c.http.prefer405over404 = true;
            routes(c);
        });
    }

    /** Starts; empty where the port cannot be had. */
    public static Optional<Server> start(int port) {
        Server server = new Server(port);
        try {
            server.app.start();
            return Optional.of(server);
        } catch (JavalinBindException e) {
            server.app.stop();
            return Optional.empty();
        }
    }

    public String address() {
        return "http://127.0.0.1:" + app.port() + "/";
    }

    public void stop() {
        app.stop();
        makes.close();
    }

    private void routes(JavalinConfig c) {
        c.routes.before(Guard::check);
        c.routes.get("/", ctx -> show(ctx, "form.jte", new FormPage(Form.empty(), List.of())));
        c.routes.get("/example", ctx -> show(ctx, "form.jte", new FormPage(Form.example(), List.of())));
        c.routes.post("/form", ctx -> show(ctx, "form.jte", another(Form.sent(Guard.form(ctx)))));
        c.routes.post("/make", this::make);
        c.routes.get("/make/{id}", this::result);
        c.routes.get(
                "/make/{id}/form",
                ctx -> show(ctx, "form.jte", new FormPage(work(ctx).form(), List.of())));
        c.routes.get("/make/{id}/make.yaml", this::makeText);
        c.routes.get("/make/{id}/all.zip", this::zip);
        c.routes.get("/make/{id}/file/{name}", this::file);
        c.routes.get("/look.css", ctx -> resource(ctx, "look.css", "text/css"));
        c.routes.get("/comfort.js", ctx -> resource(ctx, "comfort.js", "text/javascript"));
        plain(c, 400, Tell.said("plain.400"), Tell.said("plain.400-help"));
        plain(c, 403, Tell.said("plain.403"), Tell.said("plain.403-help"));
        plain(c, 404, Tell.said("plain.404"), Tell.said("plain.404-help"));
        plain(c, 405, Tell.said("plain.405"), Tell.said("plain.405-help"));
        plain(c, 408, Tell.said("plain.408"), Tell.said("plain.408-help"));
        plain(c, 413, Tell.said("plain.413"), Tell.said("plain.413-help"));
        plain(c, 503, Tell.said("plain.503"), Tell.said("plain.503-help"));
        plain(c, 500, Tell.said("plain.500"), Tell.said("plain.500-help"));
    }

    private void plain(JavalinConfig c, int status, Said title, Said words) {
        c.routes.error(status, ctx -> {
            StringOutput out = new StringOutput();
            pages.render("plain.jte", Map.of("page", new PlainPage(title, words)), out);
            ctx.html(out.toString());
        });
    }

    /** Answers with a redirect (303), so that reloading the result or going back to it never sends the form again. */
    private void make(Context ctx) {
        Form form = answered(Form.sent(Guard.form(ctx)));
        List<String> left = Example.left(form);
        String text = form.makeText();
        try {
            MakeFile make = read(form, text);
            if (!left.isEmpty()) {
                refused(ctx, new FormPage(form, List.of(), left));
                return;
            }
            String id = makes.take(form, text, makes.session(make));
            makes.find(id).ifPresent(work -> work.made(PATIENCE_MILLIS));
            ctx.redirect("/make/" + id, HttpStatus.SEE_OTHER);
        } catch (BadInput e) {
            refused(ctx, new FormPage(form, e.findings(), left));
        }
    }

    /** The form again, with a free place more in its lists; what it does not have is told. */
    private static FormPage another(Form form) {
        return new FormPage(form, Strangers.in(form, Table.keys()));
    }

    /** The make, or everything that is wrong with the form and with the file that it says. */
    private static MakeFile read(Form form, String text) {
        List<Finding> wrong = new ArrayList<>(Strangers.in(form, Table.keys()));
        try {
            MakeFile make = Make.read("form", text.getBytes(StandardCharsets.UTF_8));
            if (wrong.isEmpty()) {
                return make;
            }
        } catch (BadInput e) {
            wrong.addAll(e.findings());
        }
        throw new BadInput(wrong);
    }

    /** What was answered where some fields still held the example's values: to leave them out, or that they are right. */
    private static Form answered(Form sent) {
        return switch (sent.value("left")) {
            case "out" -> {
                List<String> keys = new ArrayList<>(Example.left(sent));
                keys.addAll(List.of(Form.EXAMPLE, "left"));
                yield sent.without(keys);
            }
            case "mine" -> sent.without(List.of(Form.EXAMPLE, "left"));
            default -> sent;
        };
    }

    private void refused(Context ctx, FormPage page) {
        ctx.status(422);
        show(ctx, "form.jte", page);
    }

    /** The result, or a page that asks again by itself. */
    private void result(Context ctx) {
        Makes.Work work = work(ctx);
        try {
            Optional<Made> made = work.made(LOOK_MILLIS);
            if (made.isPresent()) {
                show(ctx, "result.jte", new ResultPage(id(ctx), work.session(), made.get()));
            } else {
                ctx.status(202).header("Refresh", "1");
                show(ctx, "waiting.jte", new WaitingPage(work.session().make().name(), makes.before(work)));
            }
        } catch (BadInput e) {
            refused(ctx, new FormPage(work.form(), e.findings()));
        }
    }

    private void show(Context ctx, String template, Object page) {
        StringOutput out = new StringOutput();
        pages.render(template, page, out);
        ctx.html(out.toString());
    }

    private static String id(Context ctx) {
        return ctx.pathParam("id");
    }

    private Makes.Work work(Context ctx) {
        return makes.find(id(ctx)).orElseThrow(NotFoundResponse::new);
    }

    /** The make with the files that it offers; the report lists all of them, so it comes last. */
    private static Made offered(Session session) {
        return session.made(Offered.of(session.make()));
    }

    private void file(Context ctx) {
        String name = ctx.pathParam("name");
        Session session = work(ctx).session();
        Document document = name.equals(Report.NAME)
                ? offered(session).report()
                : session.document(name).orElseThrow(NotFoundResponse::new);
        String type = TYPES.getOrDefault(name.substring(name.lastIndexOf('.') + 1), "application/json");
        if (name.endsWith(".svg")) {
            // the drawing carries its own styles
            ctx.header(
                    "Content-Security-Policy", "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'");
        }
        if (name.endsWith(".html")) {
            // the page's own policy is narrower still: it names the hash of its style and of its script
            ctx.header(
                    "Content-Security-Policy",
                    "default-src 'none'; style-src 'unsafe-inline'; script-src 'unsafe-inline';"
                            + " base-uri 'none'; form-action 'none'; frame-ancestors 'none'");
        }
        ctx.contentType(type).result(document.bytes());
    }

    private void makeText(Context ctx) {
        download(ctx, "make.yaml", "application/yaml", work(ctx).text().getBytes(StandardCharsets.UTF_8));
    }

    private void zip(Context ctx) throws IOException {
        Makes.Work work = work(ctx);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Document d : offered(work.session()).documents()) {
                entry(zip, d.name(), d.bytes());
            }
            entry(zip, "make.yaml", work.text().getBytes(StandardCharsets.UTF_8));
        }
        download(ctx, "stretchwright.zip", "application/zip", bytes.toByteArray());
    }

    private static void entry(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        // a fixed date: the same make gives the same bytes
        entry.setTimeLocal(java.time.LocalDateTime.of(2026, 1, 1, 0, 0));
        zip.putNextEntry(entry);
        zip.write(bytes);
        zip.closeEntry();
    }

    private static void download(Context ctx, String name, String type, byte[] bytes) {
        ctx.header("Content-Disposition", "attachment; filename=\"" + name + "\"");
        ctx.contentType(type).result(bytes);
    }

    private static void resource(Context ctx, String name, String type) throws IOException {
        try (InputStream in = Objects.requireNonNull(Server.class.getResourceAsStream("/stretchwright/web/" + name))) {
            ctx.contentType(type + "; charset=utf-8").result(in.readAllBytes());
        }
    }
}
