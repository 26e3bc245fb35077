package stretchwright.many;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import stretchwright.fit.FitReport;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.LevelHold;
import stretchwright.pattern.LevelHold.Bound;
import stretchwright.pattern.Pattern;

/** What a survey says of the hold: how the fit check judges, and the pressures reached against those wanted. */
final class SurveyHold {
    private static final Part NONE = Part.text("-");

    /** A level of one draft: the pressure reached over the one wanted, and what decided. */
    record Level(double reachedOverWanted, Bound bound) {}

    private SurveyHold() {}

    static List<Level> of(Pattern pattern, FitReport fit) {
        List<Level> out = new ArrayList<>();
        for (LevelHold hold : pattern.holds()) {
            if (hold.wanted().isEmpty()) {
                continue;
            }
            fit.levels().stream()
                    .filter(l -> l.level() == hold.level() && l.leg().equals(hold.leg()))
                    .findFirst()
                    .ifPresent(
                            l -> out.add(new Level(l.pressure() / hold.wanted().getAsDouble(), hold.bound())));
        }
        return List.copyOf(out);
    }

    /** Headings of its columns. */
    static List<Said> head() {
        return List.of(
                Tell.said("page.who"),
                Tell.said("page.in"),
                Tell.said("page.stop"),
                Tell.said("page.caution"),
                Tell.said("page.clean"),
                Tell.said("page.wanted"),
                Tell.said("page.unbound"),
                Tell.said("page.error"),
                Tell.said("page.error-smooth"),
                Tell.said("page.bound"));
    }

    static List<Part> line(Part who, Part in, Stream<SurveyTrial.Outcome> outcomes) {
        Map<FitReport.Severity, Integer> judged = new EnumMap<>(FitReport.Severity.class);
        Map<Bound, Integer> bounds = new EnumMap<>(Bound.class);
        List<Double> errors = new ArrayList<>();
        List<Double> shaped = new ArrayList<>();
        int drafts = 0;
        int levels = 0;
        for (SurveyTrial.Outcome o :
                outcomes.filter(SurveyTrial.Outcome::isDrafted).toList()) {
            drafts++;
            judged.merge(o.worst(), 1, Integer::sum);
            for (Level level : o.held()) {
                levels++;
                bounds.merge(level.bound, 1, Integer::sum);
                if (level.bound == Bound.NONE) {
                    errors.add(Math.abs(level.reachedOverWanted - 1));
                } else if (level.bound == Bound.SHAPE) {
                    shaped.add(Math.abs(level.reachedOverWanted - 1));
                }
            }
        }
        return List.of(
                who,
                in,
                share(judged.getOrDefault(FitReport.Severity.STOP, 0), drafts),
                share(judged.getOrDefault(FitReport.Severity.CAUTION, 0), drafts),
                share(judged.getOrDefault(FitReport.Severity.NOTE, 0), drafts),
                Part.count(levels),
                share(errors.size(), levels),
                errors.isEmpty() ? NONE : percentiles(errors),
                shaped.isEmpty() ? NONE : percentiles(shaped),
                words(bounds, levels));
    }

    private static Part words(Map<Bound, Integer> bounds, int levels) {
        List<Part> out = new ArrayList<>();
        bounds.forEach((bound, times) -> {
            if (bound != Bound.NONE) {
                out.add(Tell.said("page.bound-share", bound.said(), share(times, levels)));
            }
        });
        return out.isEmpty() ? NONE : Part.listed(Part.Join.COMMA, out);
    }

    private static Part percentiles(List<Double> errors) {
        double[] sorted = errors.stream().mapToDouble(e -> e).toArray();
        Arrays.sort(sorted);
        return Part.text(String.format(
                Locale.ROOT,
                "%.2f / %.2f %%",
                100 * sorted[sorted.length / 2],
                100 * sorted[(int) (0.95 * (sorted.length - 1))]));
    }

    private static Part share(int times, int of) {
        return of == 0 ? NONE : Part.share((double) times / of, 1);
    }
}
