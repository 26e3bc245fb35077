package stretchwright.fit;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.Side;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** What the judges share: the reserve that is asked for, and how measures are told. */
final class Judge {
    /** Passing should leave this much of what is allowed in reserve, for tape errors and tired cloth. */
    static final double EASY_SHARE = 0.85;

    /** An opening cut to pass with just that reserve may fall short of it by the 0.01 mm grid: on 120 mm 0.0002. */
    static final double ROUNDING = 0.0005;

    private Judge() {}

    /** "hip girth, measured", or "knee girth, estimated, give or take 12 mm"; by either leg where they differ. */
    static Said known(Body body, Measure measure) {
        return body.isGiven(measure)
                ? Tell.said("known.measured", Terms.of(measure))
                : Tell.said(
                        "known.estimated",
                        Terms.of(measure),
                        Part.length(body.value(measure).spread()));
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

    /** Up to the next whole percent: "41 % or more" for 0.403. */
    static Part.Share upTo(double share) {
        return Part.share(Math.ceil(100 * share) / 100);
    }
}
