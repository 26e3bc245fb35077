package stretchwright.web.door;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;

/** Why a request is turned away with 403; told in plain words by the page that answers it. */
public enum Refusal {
    /** Another name than ours. */
    HOST,
    /** Sent by another site's page. */
    ORIGIN,
    /** The form's seal is missing, or not this browser's. */
    SEAL,
    /** The pass phrase was not given. */
    JOIN;

    private static final String WHY = "refusal";

    ForbiddenResponse of(Context ctx) {
        ctx.attribute(WHY, this);
        return new ForbiddenResponse(name());
    }

    /** Of an answer with 403. */
    public static Refusal told(Context ctx) {
        Refusal why = ctx.attribute(WHY);
        return why == null ? HOST : why;
    }
}
