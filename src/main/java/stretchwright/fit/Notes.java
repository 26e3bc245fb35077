package stretchwright.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Said;

/**
 * At most three notes a make: what safety asks for, then what can be acted on before cutting. The others are asides, "also good to
 * know". Safety is never an aside: where there is more of it than three notes hold, the third tells all the rest.
 */
public final class Notes {
    public static final int MOST = 3;

    /** The first keys of what is told for safety's sake: children, blades, pressure on a limb, a fall on what is in a pocket. */
    private static final List<String> SAFETY = List.of(
            "garment.child",
            "lower.over-boot",
            "pressure.about",
            "lower.stirrup",
            "lower.inside-boot",
            "parts.phone",
            "parts.pads",
            "safety.");

    /**
     * Then, by their first keys: what may be wrong in wear and a change of style turns; what to measure, wash or try before cutting;
     * what to know when sewing.
     */
    private static final List<String> OTHERS = List.of(
            "slack.",
            "settles.",
            "wanted.missed",
            "slip.",
            "garment.estimated",
            "assumed.usual-width",
            "washed.",
            "lower.boot-top",
            "cover.thin",
            "wanted.",
            "length.child",
            "hold.full-hip",
            "band.takes-in",
            "band.elastic",
            "length.leg",
            "recovery.",
            "figure.",
            "lower.to-collar",
            "band.straight-would-do",
            "parts.panel",
            "parts.knee",
            "lower.over-heel",
            "band.no-dart");

    private static final List<String> ORDER =
            Stream.concat(SAFETY.stream(), OTHERS.stream()).toList();

    private Notes() {}

    /** The same with no more than three notes among the verdicts; all that is known is in the one list or the other. */
    static FitReport few(FitReport fit) {
        List<Verdict> notes = new ArrayList<>(
                fit.all().stream().filter(v -> v.severity() == Severity.NOTE).toList());
        notes.sort(Comparator.comparingInt(Notes::rank));
        int safety = (int) notes.stream().filter(Notes::isForSafety).count();
        List<Verdict> kept = new ArrayList<>(notes.subList(0, Math.min(MOST, notes.size())));
        List<Verdict> asides = notes.subList(kept.size(), notes.size());
        if (safety > MOST) {
            kept = new ArrayList<>(notes.subList(0, MOST - 1));
            kept.add(together(notes.subList(MOST - 1, safety)));
            asides = notes.subList(safety, notes.size());
        }
        List<Verdict> verdicts = Stream.concat(
                        fit.verdicts().stream().filter(v -> v.severity() != Severity.NOTE), kept.stream())
                .toList();
        return fit.withAside(verdicts, asides);
    }

    public static boolean isForSafety(Verdict v) {
        return rank(v) < SAFETY.size();
    }

    /** Whether it has its place among the others. */
    public static boolean isRanked(Verdict v) {
        return rank(v) < ORDER.size();
    }

    private static int rank(Verdict v) {
        String key = v.message().key();
        int at = 0;
        while (at < ORDER.size() && !key.startsWith(ORDER.get(at))) {
            at++;
        }
        return at;
    }

    private static Verdict together(List<Verdict> notes) {
        Said all = Said.NOTHING;
        for (Verdict v : notes) {
            all = all.and(Tell.said("safety.one", v.about(), v.message().and(v.remedy())));
        }
        return new Verdict(Severity.NOTE, Tell.said("about.safety"), all, Said.NOTHING);
    }
}
