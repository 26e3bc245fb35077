package stretchwright.web.paper;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import stretchwright.ground.Document;
import stretchwright.make.Made;
import stretchwright.make.Session;
import stretchwright.report.Report;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Opened;
import stretchwright.web.frame.Screen;

/** Each file of a make by its name, all of them in one, and the make file itself. */
public final class FilesScreen implements Screen {
    /** Kinds of files by the ends of their names, as registered with IANA. */
    private static final Map<String, String> TYPES = Map.of(
            "svg", "image/svg+xml",
            "pdf", "application/pdf",
            "html", "text/html; charset=utf-8",
            "png", "image/png",
            "dxf", "image/vnd.dxf",
            "plt", "application/vnd.hp-HPGL");

    private final Bench bench;

    public FilesScreen(Bench bench) {
        this.bench = bench;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/makes/{id}/make.yaml", this::makeText);
        routes.get("/makes/{id}/all.zip", this::zip);
        routes.get("/makes/{id}/file/{name}", this::file);
    }

    /** The make with the files that it offers; the report lists all of them, so it comes last. */
    private static Made offered(Session session) {
        return session.made(Offered.of(session.make()));
    }

    private void file(Context ctx) {
        String name = ctx.pathParam("name");
        Session session = bench.make(ctx).session();
        Document document = bench.heavy(() -> name.equals(Report.NAME)
                ? offered(session).report()
                : session.document(name).orElseThrow(NotFoundResponse::new));
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
        download(ctx, "make.yaml", "application/yaml", bench.make(ctx).text().getBytes(StandardCharsets.UTF_8));
    }

    private void zip(Context ctx) throws IOException {
        Opened make = bench.make(ctx);
        Made made = bench.heavy(() -> offered(make.session()));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Document d : made.documents()) {
                entry(zip, d.name(), d.bytes());
            }
            entry(zip, "make.yaml", make.text().getBytes(StandardCharsets.UTF_8));
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
}
