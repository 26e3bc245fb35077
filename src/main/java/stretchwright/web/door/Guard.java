package stretchwright.web.door;

import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Who may ask, how much may be sent, and what the browser is told to refuse. */
public final class Guard {
    /** A filled-in form has about 3 kB. */
    public static final int LARGEST = 200_000;

    private static final int MOST_FIELDS = 2000;

    private Guard() {}

    /** Another site whose name was pointed at this machine has its own name in Host; its pages have it in Origin. */
    public static void check(Context ctx) {
        headers(ctx);
        String host = ctx.header("Host");
        if (!isHere(host, ctx.req().getLocalPort())) {
            throw new ForbiddenResponse("This page is for this computer only.");
        }
        String origin = ctx.header("Origin");
        if (ctx.req().getMethod().equals("POST") && origin != null && !origin.equals("http://" + host)) {
            throw new ForbiddenResponse("The form was sent from another site.");
        }
    }

    private static boolean isHere(@Nullable String host, int port) {
        return host != null && (host.equals("127.0.0.1:" + port) || host.equals("localhost:" + port));
    }

    private static void headers(Context ctx) {
        ctx.header(
                "Content-Security-Policy",
                "default-src 'none'; img-src 'self'; style-src 'self'; script-src 'self'; connect-src 'self'; worker-src 'self'; form-action 'self';"
                        + " base-uri 'none'; frame-ancestors 'none'");
        ctx.header("X-Content-Type-Options", "nosniff");
        // with no-referrer browsers send "Origin: null" from our own form
        ctx.header("Referrer-Policy", "same-origin");
        ctx.header("Cache-Control", "no-store");
    }

    /** The sent form; all values of a name in their order. */
    public static Map<String, List<String>> form(Context ctx) {
        String type = ctx.header("Content-Type");
        if (type == null || !type.startsWith("application/x-www-form-urlencoded")) {
            throw new BadRequestResponse("Send the form of the first page.");
        }
        return decoded(new String(SentForm.read(ctx, LARGEST), StandardCharsets.UTF_8));
    }

    private static Map<String, List<String>> decoded(String text) {
        Map<String, List<String>> typed = new LinkedHashMap<>();
        String[] pairs = text.split("&", MOST_FIELDS + 1);
        if (pairs.length > MOST_FIELDS) {
            throw new BadRequestResponse("The form has too many fields.");
        }
        try {
            for (String pair : pairs) {
                int eq = pair.indexOf('=');
                String value = URLDecoder.decode(pair.substring(eq + 1), StandardCharsets.UTF_8);
                if (eq > 0 && !value.isEmpty()) {
                    String key = URLDecoder.decode(pair.substring(0, eq), StandardCharsets.UTF_8);
                    typed.computeIfAbsent(key, k -> new ArrayList<>()).add(value);
                }
            }
        } catch (IllegalArgumentException e) {
            throw new BadRequestResponse("The form cannot be read.");
        }
        return typed;
    }
}
