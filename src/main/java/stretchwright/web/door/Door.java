package stretchwright.web.door;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;

/** Who may ask: the right name, from our own pages, and, where the page is shared, with the pass phrase. */
public final class Door {
    /** What is given to everybody: how to join, how that looks, and that the page is up. */
    private static final Set<String> OPEN =
            Set.of("/join", "/look.css", "/icon.svg", "/favicon.ico", "/live.js", "/htmx.js", "/health");

    /** What changes nothing. */
    private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");

    private static final String JOINED = "joined";
    private static final String COOKIE = "stretchwright-";

    private final Opening opening;
    private final Hosts hosts;
    private final Sessions sessions = new Sessions(System::currentTimeMillis);
    private final Tries tries = new Tries(System::currentTimeMillis);

    /** Each try takes a core for a while: one after the other. */
    private final Semaphore trying = new Semaphore(1, true);

    public Door(Opening opening) {
        this.opening = opening;
        this.hosts = new Hosts(opening.host());
    }

    public Opening opening() {
        return opening;
    }

    /** Before anything is looked for. */
    public void check(Context ctx) {
        Headers.all().forEach(ctx::header);
        String host = ctx.header("Host");
        if (!hosts.has(host, ctx.req().getLocalAddr(), ctx.req().getLocalPort())) {
            throw Refusal.HOST.of(ctx);
        }
        if (isForeign(ctx, "http://" + host)) {
            throw Refusal.ORIGIN.of(ctx);
        }
        if (!mayAsk(ctx) && !OPEN.contains(ctx.path())) {
            turnAway(ctx);
        }
    }

    /** Before a form that has a place here is looked at. */
    public void checkSeal(Context ctx) {
        if (!READING.contains(ctx.req().getMethod())) {
            Seal.check(ctx);
        }
    }

    /** Another site's page may lead here, and nothing else: neither send a form, nor take a picture or a script from here. */
    private static boolean isForeign(Context ctx, String own) {
        boolean reads = READING.contains(ctx.req().getMethod());
        String origin = ctx.header("Origin");
        String site = ctx.header("Sec-Fetch-Site");
        boolean ours = site == null || site.equals("same-origin") || site.equals("none");
        boolean led = reads && "navigate".equals(ctx.header("Sec-Fetch-Mode"));
        return origin != null && !origin.equalsIgnoreCase(own) || !ours && !led;
    }

    private void turnAway(Context ctx) {
        if (ctx.header("HX-Request") != null) {
            ctx.header("HX-Redirect", "/join");
        } else if (ctx.req().getMethod().equals("GET")) {
            ctx.redirect(Wanted.behindJoin(ctx.path()), HttpStatus.SEE_OTHER);
            ctx.skipRemainingHandlers();
            return;
        }
        throw Refusal.JOIN.of(ctx);
    }

    /** Whether nobody is asked here, or this browser gave the pass phrase. */
    public boolean mayAsk(Context ctx) {
        if (!opening.isShared()) {
            return true;
        }
        Boolean known = ctx.attribute(JOINED);
        if (known == null) {
            String token = token(ctx);
            known = !token.isEmpty() && sessions.use(token);
            ctx.attribute(JOINED, known);
            if (known && !OPEN.contains(ctx.path())) {
                give(ctx, token); // lasts from its last use
            }
        }
        return known;
    }

    /**
     * Tries a pass phrase; this browser has joined where it was right.
     *
     * @return 0 where it was looked at, else how many seconds there are to wait before another try
     */
    public long join(Context ctx, String words) {
        Optional<Phrase> asked = opening.phrase();
        if (asked.isEmpty()) {
            return 0;
        }
        String from = ctx.req().getRemoteAddr();
        long wait = tries.take(from);
        if (wait > 0) {
            return (wait + 999) / 1000;
        }
        if (isRight(asked.get(), words)) {
            tries.giveBack(from);
            sessions.end(token(ctx));
            give(ctx, sessions.begin());
            Seal.renew(ctx);
            ctx.attribute(JOINED, true);
        }
        return 0;
    }

    private boolean isRight(Phrase asked, String words) {
        trying.acquireUninterruptibly();
        try {
            return asked.is(words);
        } finally {
            trying.release();
        }
    }

    /** This browser is asked again. */
    public void leave(Context ctx) {
        sessions.end(token(ctx));
        ctx.cookie(cookie(ctx, "", 0));
        Seal.renew(ctx);
        ctx.attribute(JOINED, false);
    }

    private static void give(Context ctx, String token) {
        ctx.cookie(cookie(ctx, token, (int) Sessions.LASTS.toSeconds()));
    }

    private static Cookie cookie(Context ctx, String token, int seconds) {
        return new Cookie(name(ctx), token, "/", seconds, false, true, null, SameSite.STRICT);
    }

    /** Cookies are the same for all ports of a machine; two pages shall not put each other out. */
    private static String name(Context ctx) {
        return COOKIE + ctx.req().getLocalPort();
    }

    private static String token(Context ctx) {
        @Nullable String token = ctx.cookie(name(ctx));
        return token != null && Secret.isOne(token) ? token : "";
    }
}
