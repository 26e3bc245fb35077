package stretchwright.advice;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stretchwright.fit.FitReport;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Tried;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.fit.Subject;
import stretchwright.fit.Told;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** What the fit check says once a change was tried, and what is offered then. */
final class RemediesWords {
    private RemediesWords() {}

    /** What the program cannot compute and still must be said, and what turns the verdict, or does not. */
    static Said remedy(Subject.Kind kind, List<Tried> tried) {
        Said words = tried.get(0).turns()
                ? Tell.said(
                        "remedy.turns",
                        Part.listed(
                                Part.Join.EITHER,
                                tried.stream()
                                        .map(t -> Tell.said("remedy.offer", t.change(), t.after()))
                                        .toList()))
                : Tell.said(
                        "remedy.vain",
                        Part.listed(
                                Part.Join.SEMICOLON,
                                tried.stream()
                                        .map(t -> Tell.said("remedy.attempt", t.change(), t.after()))
                                        .toList()));
        return kept(kind).and(words);
    }

    private static Said kept(Subject.Kind kind) {
        return switch (kind) {
            case RISING_PRESSURE -> Tell.said("remedy.check-girths");
            case TAKEN_IN -> Tell.said("remedy.stretch-evenly");
            default -> Said.NOTHING;
        };
    }

    /** Of a change that turns the verdict. */
    static Said after(Verdict v, FitReport before, FitReport after) {
        Part place = v.place();
        Said left = worst(after, place)
                .map(w -> Tell.said(
                        "after.milder",
                        w.severity().said(),
                        new Part.Clause(w.message().first())))
                .orElseGet(() -> v.kind() == Subject.Kind.CLOTH_DIRECTION
                        ? turned(before, after)
                        : numbers(v, after).orElse(Tell.said("after.nothing")));
        List<Said> fresh = after.verdicts().stream()
                .filter(w -> w.severity() != Severity.NOTE
                        && !w.place().equals(place)
                        && RemediesTurn.count(after, w.place(), w.severity())
                                > RemediesTurn.count(before, w.place(), w.severity()))
                .map(w -> Tell.said("after.fresh", w.place(), new Part.Clause(w.message())))
                .distinct()
                .toList();
        return fresh.isEmpty() ? left : Tell.said("after.more", left, Part.listed(Part.Join.SEMICOLON, fresh));
    }

    /** The level that asks most of the cloth standing, and what is then asked of it there. */
    private static Said turned(FitReport before, FitReport after) {
        FitReport.LevelFit hardest = before.levels().stream()
                .max((one, other) -> Double.compare(one.across(), other.across()))
                .orElseThrow();
        double then = after.levels().stream()
                .filter(l -> l.place().equals(hardest.place()))
                .mapToDouble(FitReport.LevelFit::across)
                .findFirst()
                .orElse(hardest.across());
        return Tell.said(
                "after.turned",
                hardest.place(),
                Part.share(hardest.across()),
                Part.share(then),
                Part.length(width(hardest.place(), before)),
                Part.length(width(hardest.place(), after)));
    }

    private static double width(Part place, FitReport fit) {
        return fit.levels().stream()
                .filter(l -> l.place().equals(place))
                .mapToDouble(FitReport.LevelFit::width)
                .findFirst()
                .orElse(0);
    }

    /** Of a change that does not. */
    static Said vain(Verdict v, FitReport before, FitReport after) {
        List<Part> stops = after.verdicts().stream()
                .filter(w -> w.severity() == Severity.STOP
                        && RemediesTurn.count(after, w.place(), Severity.STOP)
                                > RemediesTurn.count(before, w.place(), Severity.STOP))
                .map(Verdict::place)
                .distinct()
                .toList();
        return stops.isEmpty()
                ? numbers(v, after).orElse(Tell.said("after.same"))
                : Tell.said("after.stop", Part.listed(Part.Join.COMMA, stops));
    }

    /** Of one that the draft refuses. */
    static Said undrafted() {
        return Tell.said("after.undrafted");
    }

    private static Optional<Verdict> worst(FitReport fit, Part place) {
        return fit.verdicts().stream()
                .filter(w -> w.severity() != Severity.NOTE && w.place().equals(place))
                .findFirst();
    }

    private static Optional<Said> numbers(Verdict v, FitReport fit) {
        Part place = v.place();
        return Stream.of(opening(place, fit), pose(place, fit), level(place, v.kind(), fit))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<Said> opening(Part place, FitReport fit) {
        return fit.openings().stream()
                .filter(o -> o.opening().said().equals(place))
                .findFirst()
                .map(o -> o.passes()
                        ? Tell.said("after.reserve", Part.share(o.allowed() - o.needed()))
                        : Tell.said("after.there", Part.share(o.needed()), Part.share(o.allowed())));
    }

    private static Optional<Said> pose(Part place, FitReport fit) {
        return fit.poses().stream()
                .filter(p -> p.place().equals(place))
                .max((one, other) -> Double.compare(one.needed(), other.needed()))
                .map(p -> Tell.said("after.cloth-has", Part.share(p.needed()), Part.share(p.available())));
    }

    private static Optional<Said> level(Part place, Subject.Kind kind, FitReport fit) {
        return fit.levels().stream()
                .filter(l -> l.place().equals(place))
                .findFirst()
                .map(l -> kind == Subject.Kind.STRAIN
                        ? Tell.said("after.uses", Part.share(l.across()))
                        : Tell.said("after.presses", Told.of(l).said()));
    }
}
