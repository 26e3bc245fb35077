package stretchwright.web.draft;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import stretchwright.advice.Remedy;
import stretchwright.fit.FitReport;
import stretchwright.intake.KeyChanges;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.Opened;

/** What turns the worst verdict: changes that were drafted and judged, each a press away. */
public record RemediesPage(Frame frame, Opened make, List<Offer> offers) {
    /** So many stand beside the sentence. */
    private static final int MOST = 2;

    public RemediesPage {
        offers = List.copyOf(offers);
    }

    /** A change in words, and as keys of the make. */
    public record Offer(String words, Map<String, String> changes) {
        public Set<Map.Entry<String, String>> values() {
            return changes.entrySet();
        }
    }

    static RemediesPage of(Opened make) {
        List<Remedy> all = make.session().remedies();
        List<Offer> offers = all.stream()
                .filter(r -> r.verdict().severity() == worst(all))
                .map(r -> new Offer(
                        make.voice().say(r.tried().change()),
                        KeyChanges.between(make.session().make(), r.make())))
                .collect(Collectors.toMap(Offer::words, o -> o, (a, b) -> a, LinkedHashMap::new))
                .values()
                .stream()
                .limit(MOST)
                .toList();
        return new RemediesPage(Frame.of(make, Frame.Stop.DRAFT), make, offers);
    }

    private static FitReport.Severity worst(List<Remedy> all) {
        return all.stream()
                .map(r -> r.verdict().severity())
                .min(java.util.Comparator.naturalOrder())
                .orElse(FitReport.Severity.CAUTION);
    }

    public String say(String key) {
        return make.voice().say(Tell.said(key));
    }
}
