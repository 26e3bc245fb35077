package stretchwright.web.form;

import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Doubt;
import stretchwright.body.Measure;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/**
 * Whether a measure goes with the others.
 *
 * @param doubted whether it is worth a second look
 * @param takes what is taken of its readings
 * @param why it is doubted, or what is usual beside the others; may say nothing
 */
public record Fits(boolean doubted, Said takes, Said why) {
    /** Empty before it was taken, or where something is wrong. */
    public static Optional<Fits> of(Form known, Measure measure) {
        String key = "wearer.measurements." + measure.term();
        return known.has(key) ? Trial.body(known).map(b -> of(known, b, measure)) : Optional.empty();
    }

    private static Fits of(Form known, Body body, Measure measure) {
        Said takes = Tell.said("fits.takes", Part.length(body.value(measure).mm()));
        Optional<Doubt> doubt = Trial.doubt(body, measure);
        return doubt.map(d -> new Fits(true, takes, d.message()))
                .orElseGet(() -> new Fits(false, takes, usual(known, measure)));
    }

    /** What the others let expect. */
    public static Said usual(Form known, Measure measure) {
        return Trial.expected(known, measure)
                .map(v -> Tell.said(
                        "fits.usual", Part.length(v.mm() - 2 * v.spread()), Part.length(v.mm() + 2 * v.spread())))
                .orElse(Said.NOTHING);
    }

    /** What is taken where it is skipped; nothing where nothing can be. */
    public static Said skipped(Form known, Measure measure) {
        return Trial.expected(known, measure)
                .map(v -> Tell.said("fits.skipped", Part.length(v.mm()), Part.length(v.spread())))
                .orElse(Said.NOTHING);
    }
}
