package stretchwright.web.door;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * The word in every form that shows it was given by this page to this browser: the same stands in a cookie, which no other site reads
 * (decision 0013). A form that is sent without it, or with another, is refused.
 */
public final class Seal {
    /** Field of a form, and header of a request by script. */
    public static final String NAME = "seal";

    private static final String COOKIE = "stretchwright-seal";
    private static final int LASTS = (int) Duration.ofDays(365).toSeconds();

    private Seal() {}

    /** That of the browser; a new one where it has none. */
    public static String of(Context ctx) {
        String given = ctx.attribute(COOKIE);
        return given != null ? given : brought(ctx).orElseGet(() -> renew(ctx));
    }

    /** Another one: who joins or leaves starts afresh. */
    static String renew(Context ctx) {
        String fresh = Secret.fresh();
        ctx.attribute(COOKIE, fresh);
        ctx.cookie(new Cookie(COOKIE, fresh, "/", LASTS, false, true, null, SameSite.STRICT));
        return fresh;
    }

    static void check(Context ctx) {
        String sent = ctx.header(NAME);
        if (sent == null) {
            List<String> fields = Guard.sent(ctx).getOrDefault(NAME, List.of());
            sent = fields.size() == 1 ? fields.get(0) : "";
        }
        String own = brought(ctx).orElse("");
        if (own.isEmpty() || !Phrase.same(own, sent)) {
            ctx.header("hx-refresh", "true"); // a page that was overtaken is loaded anew
            throw Refusal.SEAL.of(ctx);
        }
    }

    private static Optional<String> brought(Context ctx) {
        return Optional.ofNullable(ctx.cookie(COOKIE)).filter(Secret::isOne);
    }
}
