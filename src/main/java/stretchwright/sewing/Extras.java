package stretchwright.sewing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import stretchwright.ground.Findings;

/** Puts the sewer's own steps among those of the pattern, and finds what cannot be kept. */
final class Extras {
    static final String KEY = "sewing.extra";

    private Extras() {}

    static List<Step> into(List<Step> steps, List<SewingTerms.Extra> extras) {
        List<Step> all = new ArrayList<>(steps);
        for (SewingTerms.Extra extra : extras) {
            all.add(Step.unsewn(
                    extra.name(),
                    extra.place(),
                    List.of(),
                    extra.minutes(),
                    new LinkedHashSet<>(extra.after()),
                    extra.instruction(),
                    ""));
            all.replaceAll(s -> extra.before().contains(s.name()) ? s.alsoAfter(extra.name()) : s);
        }
        return all;
    }

    /** Names that are taken or not there, rings of waiting, more steps than can be ordered. */
    static void check(List<Step> steps, List<SewingTerms.Extra> extras, Findings findings) {
        Set<String> names = new HashSet<>();
        steps.forEach(s -> names.add(s.name()));
        if (names.size() < steps.size()) {
            findings.add(KEY, "Two steps have the same name.", "Give each extra step a name of its own.");
        }
        List<String> known = steps.stream().map(Step::name).toList();
        for (SewingTerms.Extra extra : extras) {
            List<String> named = new ArrayList<>(extra.after());
            named.addAll(extra.before());
            named.removeIf(names::contains);
            if (!named.isEmpty()) {
                findings.add(
                        KEY,
                        "The step \"" + extra.name() + "\" names \"" + named.get(0)
                                + "\", which this plan does not have.",
                        "Steps of this plan are: " + String.join(", ", known) + ".");
            }
        }
        List<String> ring = Rings.among(steps);
        if (!ring.isEmpty()) {
            findings.add(
                    KEY,
                    "The steps wait for each other: " + String.join(", then ", ring) + ", then the first again.",
                    "Leave out one \"after\" or \"before\".");
        }
        if (steps.size() > OrderOfWork.MOST_JOBS) {
            findings.add(
                    KEY,
                    "The plan has " + steps.size() + " steps.",
                    "At most " + OrderOfWork.MOST_JOBS + " can be put in order; leave out an extra step.");
        }
    }
}
