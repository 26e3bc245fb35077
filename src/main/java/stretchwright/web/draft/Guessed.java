package stretchwright.web.draft;

import java.util.Comparator;
import java.util.Optional;
import stretchwright.body.Measure;
import stretchwright.fit.FitReport.Slip;
import stretchwright.ground.Part;
import stretchwright.web.frame.Opened;
import stretchwright.web.things.Way;

/**
 * The measure that was only estimated and that leaves most open: one on which a verdict hangs, else the one that may be furthest off.
 *
 * @param address where it is measured
 */
public record Guessed(String words, String address) {
    /** Empty where all that decides was measured, and where nobody is known who could be measured. */
    static Optional<Guessed> of(Opened make) {
        String wearer = make.stored().thing().links().wearer();
        return make.demo() || wearer.isEmpty()
                ? Optional.empty()
                : make.session().fit().slips().stream()
                        .filter(s -> !make.session().body().isGiven(s.measure()))
                        .max(Comparator.comparing((Slip s) -> !s.changes().isEmpty())
                                .thenComparingDouble(s -> Math.abs(s.by())))
                        .map(s -> of(make, s));
    }

    private static Guessed of(Opened make, Slip slip) {
        String words =
                make.voice().say(Tell.said("draft.guessed", slip.measure().said(), Part.length(Math.abs(slip.by()))));
        return new Guessed(words, to(make, slip.measure()));
    }

    static String to(Opened make, Measure measure) {
        return Way.toMeasure(make.stored().thing().links(), measure, make.id());
    }
}
