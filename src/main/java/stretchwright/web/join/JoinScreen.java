package stretchwright.web.join;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import stretchwright.ground.Part;
import stretchwright.web.door.Door;
import stretchwright.web.door.Guard;
import stretchwright.web.door.Reach;
import stretchwright.web.door.Wanted;
import stretchwright.web.frame.Pages;
import stretchwright.web.frame.Screen;

/** Where a phone comes in, and where one sees how it does. */
public final class JoinScreen implements Screen {
    private static final String PAGE = "join.jte";
    private static final int NOT_RIGHT = 422;

    private final Door door;

    public JoinScreen(Door door) {
        this.door = door;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/join", ctx -> Pages.show(ctx, PAGE, page(ctx)));
        routes.post("/join", this::join);
        routes.post("/leave", this::leave);
    }

    private JoinPage page(Context ctx) {
        if (!door.opening().isShared()) {
            return JoinPage.alone();
        }
        String to = ctx.queryParam(Wanted.NAME);
        return door.mayAsk(ctx)
                ? JoinPage.joined(addresses(ctx))
                : JoinPage.asking(Wanted.of(to == null ? "" : to), "");
    }

    /** One that was found by another machine already is the best. */
    private List<String> addresses(Context ctx) {
        String used = "http://" + ctx.header("Host") + "/";
        List<String> all = Reach.addresses(door.opening(), ctx.req().getLocalPort());
        return all.contains(used) ? List.of(used) : all;
    }

    private void join(Context ctx) {
        if (!door.opening().isShared()) {
            ctx.redirect("/", HttpStatus.SEE_OTHER);
            return;
        }
        Map<String, List<String>> sent = Guard.form(ctx);
        String to = Wanted.of(first(sent, Wanted.NAME));
        long wait = door.join(ctx, first(sent, "phrase"));
        if (wait > 0) {
            ctx.status(HttpStatus.TOO_MANY_REQUESTS).header("Retry-After", Long.toString(wait));
            Pages.show(ctx, PAGE, JoinPage.asking(to, JoinPage.say(Tell.said("join.wait", Part.count((int) wait)))));
        } else if (door.mayAsk(ctx)) {
            ctx.redirect(to, HttpStatus.SEE_OTHER);
        } else {
            ctx.status(NOT_RIGHT);
            Pages.show(ctx, PAGE, JoinPage.asking(to, JoinPage.say(Tell.said("join.wrong"))));
        }
    }

    private static String first(Map<String, List<String>> sent, String name) {
        List<String> values = sent.getOrDefault(name, List.of());
        return values.isEmpty() ? "" : values.get(0);
    }

    private void leave(Context ctx) {
        door.leave(ctx);
        ctx.redirect("/join", HttpStatus.SEE_OTHER);
    }
}
