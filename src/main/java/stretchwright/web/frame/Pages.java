package stretchwright.web.frame;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import stretchwright.web.door.Seal;

/** The templates of the page, which were compiled with the program. */
public final class Pages {
    private static final TemplateEngine ENGINE =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "stretchwright.web.pages");

    /** Of the browser that a page is written for, while it is written. */
    private static final ThreadLocal<String> SEAL = ThreadLocal.withInitial(() -> "");

    private Pages() {}

    /** @param page what the template takes, by this name */
    public static void show(Context ctx, String template, Object page) {
        SEAL.set(Seal.of(ctx));
        try {
            ctx.html(text(template, page));
        } finally {
            SEAL.remove();
        }
    }

    /** The same for nobody known: without a seal, so that no form of it is let in. */
    public static String text(String template, Object page) {
        StringOutput out = new StringOutput();
        ENGINE.render(template, java.util.Map.of("page", page), out);
        return out.toString();
    }

    /** What each form shows to be let in: seal.jte writes it, and nothing else needs it. */
    public static String seal() {
        return SEAL.get();
    }

    /** The same for requests by script. */
    public static String sealHeader() {
        return "{\"" + Seal.NAME + "\":\"" + seal() + "\"}";
    }
}
