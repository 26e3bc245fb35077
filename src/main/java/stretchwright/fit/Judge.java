package stretchwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.Side;

/** What the judges share: the reserve that is asked for, and how numbers and measures are worded. */
final class Judge {
    /** Passing should leave this much of what is allowed in reserve, for tape errors and tired cloth. */
    static final double EASY_SHARE = 0.85;

    /** An opening cut to pass with just that reserve may fall short of it by the 0.01 mm grid: on 120 mm 0.0002. */
    static final double ROUNDING = 0.0005;

    private Judge() {}

    /** "hip girth, measured", or "knee girth, estimated, give or take 12 mm"; by either leg where they differ. */
    static String known(Body body, Measure measure) {
        return body.isGiven(measure)
                ? measure.term() + ", measured"
                : text(
                        "%s, estimated, give or take %.0f mm",
                        measure.term(), body.value(measure).spread());
    }

    /** The body as a whole, and each of its legs where they were measured apart. */
    static List<Body> alsoByLeg(Body body) {
        List<Body> out = new ArrayList<>(List.of(body));
        if (!body.legs().alike()) {
            for (Side side : Side.values()) {
                out.add(body.leg(side));
            }
        }
        return out;
    }

    static double percent(double share) {
        return 100 * share;
    }

    static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
