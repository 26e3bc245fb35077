package stretchwright.web.frame;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;

/** The templates of the page, which were compiled with the program. */
public final class Pages {
    private static final TemplateEngine ENGINE =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "stretchwright.web.pages");

    private Pages() {}

    /** @param page what the template takes, by this name */
    public static void show(Context ctx, String template, Object page) {
        StringOutput out = new StringOutput();
        ENGINE.render(template, java.util.Map.of("page", page), out);
        ctx.html(out.toString());
    }
}
