package stretchwright.sewing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** Puts the sewer's own steps among those of the pattern, and finds what cannot be kept. */
final class Extras {
    static final String KEY = "sewing.extra";

    private Extras() {}

    static List<Step> into(List<Step> steps, List<SewingTerms.Extra> extras) {
        Map<String, StepName> names = new LinkedHashMap<>();
        steps.forEach(s -> names.put(s.name().word(), s.name()));
        extras.forEach(e -> names.putIfAbsent(e.name(), new StepName.Own(e.name())));
        List<Step> all = new ArrayList<>(steps);
        for (SewingTerms.Extra extra : extras) {
            StepName name = new StepName.Own(extra.name());
            all.add(Step.unsewn(
                    name,
                    extra.place(),
                    List.of(),
                    extra.minutes(),
                    extra.after().stream()
                            .map(word -> names.getOrDefault(word, new StepName.Own(word)))
                            .collect(Collectors.toCollection(LinkedHashSet::new)),
                    Tell.own(extra.instruction()),
                    Said.NOTHING));
        }
        for (SewingTerms.Extra extra : extras) {
            StepName name = new StepName.Own(extra.name());
            all.replaceAll(s -> extra.before().contains(s.name().word()) ? s.alsoAfter(name) : s);
        }
        return all;
    }

    /** Names that are taken or not there, rings of waiting, more steps than can be ordered. */
    static void check(List<Step> steps, List<SewingTerms.Extra> extras, Findings findings) {
        List<String> known = steps.stream().map(s -> s.name().word()).toList();
        Set<String> names = new HashSet<>(known);
        if (names.size() < steps.size()) {
            findings.add(KEY, Tell.said("wrong.same-name"), Tell.said("right.same-name"));
        }
        for (SewingTerms.Extra extra : extras) {
            List<String> named = new ArrayList<>(extra.after());
            named.addAll(extra.before());
            named.removeIf(names::contains);
            if (!named.isEmpty()) {
                findings.add(
                        KEY,
                        Tell.said("wrong.no-such-step", Part.text(extra.name()), Part.text(named.get(0))),
                        Tell.said("right.no-such-step", Part.listed(Part.Join.COMMA, words(known))));
            }
        }
        Rings.among(steps).stream()
                .<Part>map(name -> Part.text(name.word()))
                .reduce((one, next) -> Tell.said("wrong.then", one, next))
                .ifPresent(ring ->
                        findings.add(KEY, Tell.said("wrong.wait-in-a-ring", ring), Tell.said("right.wait-in-a-ring")));
        if (steps.size() > OrderOfWork.MOST_JOBS) {
            findings.add(
                    KEY,
                    Tell.said("wrong.too-many-steps", Part.count(steps.size())),
                    Tell.said("right.too-many-steps", Part.count(OrderOfWork.MOST_JOBS)));
        }
    }

    private static List<Part.Text> words(List<String> names) {
        return names.stream().map(Part::text).toList();
    }
}
