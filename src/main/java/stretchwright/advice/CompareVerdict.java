package stretchwright.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stretchwright.fit.FitReport;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.fit.Subject;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;

/**
 * A verdict of one make beside that of the other about the same.
 *
 * @param status what it is in B: new, gone, milder, worse or same
 */
public record CompareVerdict(Status status, Optional<Verdict> a, Optional<Verdict> b) {
    public enum Status {
        NEW(Tell.said("status.new")),
        WORSE(Tell.said("status.worse")),
        SAME(Tell.said("status.same")),
        MILDER(Tell.said("status.milder")),
        GONE(Tell.said("status.gone"));

        private final Said said;

        Status(Said said) {
            this.said = said;
        }

        public Said said() {
            return said;
        }

        /** As written in comparisons for other programs. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** The verdict as B says it; of one that is gone, as A did. */
    public Verdict said() {
        return b.or(() -> a).orElseThrow();
    }

    /** Such as "new caution: knee: ...". */
    public String line(Voice voice) {
        boolean moved = status == Status.MILDER || status == Status.WORSE;
        Part severity = moved
                ? Tell.said(
                        "compare.moved",
                        a.orElseThrow().severity().said(),
                        b.orElseThrow().severity().said())
                : said().severity().said();
        return "  " + voice.say(Tell.said("compare.line", status.said(), severity, said().about(), said().message()));
    }

    public static List<CompareVerdict> of(FitReport a, FitReport b) {
        List<Verdict> left = new ArrayList<>(b.all());
        List<CompareVerdict> out = new ArrayList<>();
        for (Verdict v : a.all()) {
            Optional<Verdict> twin = twin(v, left);
            twin.ifPresent(left::remove);
            out.add(new CompareVerdict(twin.map(w -> status(v, w)).orElse(Status.GONE), Optional.of(v), twin));
        }
        left.forEach(w -> out.add(new CompareVerdict(Status.NEW, Optional.empty(), Optional.of(w))));
        return out;
    }

    /** The one that says the same with other numbers; else one about the same place that is milder or worse. */
    private static Optional<Verdict> twin(Verdict v, List<Verdict> others) {
        Optional<Verdict> same = others.stream().filter(v::saysTheSame).findFirst();
        return same.isPresent()
                ? same
                : others.stream()
                        .filter(w -> w.place().equals(v.place())
                                && w.severity() != v.severity()
                                && w.kind() == v.kind()
                                && v.kind() != Subject.Kind.NONE)
                        .findFirst();
    }

    private static Status status(Verdict a, Verdict b) {
        int by = b.severity().compareTo(a.severity());
        return by > 0 ? Status.MILDER : by < 0 ? Status.WORSE : Status.SAME;
    }
}
