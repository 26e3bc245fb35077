package stretchwright.web.door;

import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.UnsupportedMediaTypeResponse;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How much may be sent, and in which way. */
public final class Guard {
    /** A filled-in form has about 3 kB. */
    public static final int LARGEST = 200_000;

    private static final int MOST_FIELDS = 2000;
    private static final String SENT = "sent-form";

    private Guard() {}

    /** The sent form; all values of a name in their order. */
    public static Map<String, List<String>> form(Context ctx) {
        Map<String, List<String>> fields = new LinkedHashMap<>(sent(ctx));
        fields.remove(Seal.NAME);
        return fields;
    }

    /** The same with its seal; read once. */
    static Map<String, List<String>> sent(Context ctx) {
        Map<String, List<String>> known = ctx.attribute(SENT);
        if (known != null) {
            return known;
        }
        String type = ctx.header("Content-Type");
        if (type == null || !type.startsWith("application/x-www-form-urlencoded")) {
            throw new UnsupportedMediaTypeResponse("Send the form of the page.");
        }
        Map<String, List<String>> fields = decoded(new String(SentForm.read(ctx, LARGEST), StandardCharsets.UTF_8));
        ctx.attribute(SENT, fields);
        return fields;
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
