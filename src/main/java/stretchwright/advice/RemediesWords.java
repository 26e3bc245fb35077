package stretchwright.advice;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stretchwright.fabric.Laplace;
import stretchwright.fit.FitReport;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.fit.Subject;

/** What the fit check says once a change was tried. */
final class RemediesWords {
    private RemediesWords() {}

    /** Of a change that turns the verdict. */
    static String after(Verdict v, FitReport before, FitReport after) {
        String place = v.place();
        String left = worst(after, place)
                .map(w -> "then a " + w.severity().word() + ": " + sentence(w.message()))
                .orElseGet(() -> numbers(v, after).orElse("then nothing is said against it"));
        List<String> fresh = after.verdicts().stream()
                .filter(w -> w.severity() != Severity.NOTE
                        && !w.place().equals(place)
                        && RemediesKey.count(after, w.place(), w.severity())
                                > RemediesKey.count(before, w.place(), w.severity()))
                .map(w -> w.place() + ": " + sentence(w.message()))
                .distinct()
                .toList();
        return left + (fresh.isEmpty() ? "" : ", but a caution more: " + String.join("; ", fresh));
    }

    /** Of a change that does not. */
    static String vain(Verdict v, FitReport before, FitReport after) {
        List<String> stops = after.verdicts().stream()
                .filter(w -> w.severity() == Severity.STOP
                        && RemediesKey.count(after, w.place(), Severity.STOP)
                                > RemediesKey.count(before, w.place(), Severity.STOP))
                .map(Verdict::place)
                .distinct()
                .toList();
        return stops.isEmpty()
                ? numbers(v, after).orElse("the same is said")
                : stops.stream().collect(Collectors.joining(", ", "then a stop: ", ""));
    }

    private static Optional<Verdict> worst(FitReport fit, String place) {
        return fit.verdicts().stream()
                .filter(w -> w.severity() != Severity.NOTE && w.place().equals(place))
                .findFirst();
    }

    private static Optional<String> numbers(Verdict v, FitReport fit) {
        String place = v.place();
        return Stream.of(opening(place, fit), pose(place, fit), level(place, v.kind(), fit))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<String> opening(String place, FitReport fit) {
        return fit.openings().stream()
                .filter(o -> o.opening().equals(place))
                .findFirst()
                .map(o -> o.passes()
                        ? text("goes on with %.0f %% in reserve", 100 * (o.allowed() - o.needed()))
                        : text("needs %.0f %%, %.0f %% is there", 100 * o.needed(), 100 * o.allowed()));
    }

    private static Optional<String> pose(String place, FitReport fit) {
        return fit.poses().stream()
                .filter(p -> (p.region() + " " + p.direction()).equals(place))
                .max((one, other) -> Double.compare(one.needed(), other.needed()))
                .map(p -> text("needs %.0f %%, the cloth has %.0f %%", 100 * p.needed(), 100 * p.available()));
    }

    private static Optional<String> level(String place, Subject.Kind kind, FitReport fit) {
        return fit.levels().stream()
                .filter(l -> l.place().equals(place))
                .findFirst()
                .map(l -> kind == Subject.Kind.STRAIN
                        ? text("uses %.0f %% standing", 100 * l.across())
                        : text("about %.0f mmHg there", Laplace.toMmHg(l.pressure())));
    }

    /** The first sentence, without its full stop. */
    private static String sentence(String message) {
        return message.split("(?<=[.!]) ", 2)[0].replaceAll("[.]$", "");
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
