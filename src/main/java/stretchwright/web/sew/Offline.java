package stretchwright.web.sew;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import stretchwright.web.frame.Opened;

/** What a browser keeps of a plan, so that the sewing goes on without a connection: only addresses of this one make's sewing. */
final class Offline {
    /** What all screens are made of. */
    private static final List<String> LOOK = List.of("/look.css", "/sew.js", "/live.js", "/htmx.js");

    private Offline() {}

    /** By which a browser sees that what it keeps is of an earlier plan. */
    static String plan(Opened make) {
        return Long.toHexString(make.seen()) + "-"
                + Integer.toHexString(
                        make.session().sewing().operations().toString().hashCode());
    }

    /** Every address of the sewing; the browser asks for each once. */
    static void pages(Context ctx, Opened make, List<Stop> stops) {
        String sewing = make.address() + "/sew";
        List<String> pages = new ArrayList<>(List.of(sewing, sewing + "/all"));
        stops.forEach(s -> pages.add(sewing + "/" + s.key()));
        make.session().sewing().operations().stream()
                .flatMap(o -> StepPictures.of(make, o).stream())
                .forEach(d -> pages.add(d.address()));
        pages.addAll(LOOK);
        ctx.json(Map.of("plan", plan(make), "pages", pages));
    }

    /** The script that answers in the browser when the program does not; it may answer for this make's sewing and nothing else. */
    static void worker(Context ctx, Opened make) throws IOException {
        ctx.header("Service-Worker-Allowed", make.address() + "/sew");
        script(ctx, "sew-worker.js");
    }

    static void script(Context ctx, String name) throws IOException {
        try (InputStream in = Objects.requireNonNull(Offline.class.getResourceAsStream("/stretchwright/web/" + name))) {
            ctx.contentType("text/javascript;charset=utf-8").result(in.readAllBytes());
        }
    }
}
