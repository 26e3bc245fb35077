package stretchwright.sewing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
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
        sameName(known, extras, findings);
        for (int i = 0; i < extras.size(); i++) {
            SewingTerms.Extra extra = extras.get(i);
            noSuchStep(key(i, "after"), extra.name(), extra.after(), known, findings);
            noSuchStep(key(i, "before"), extra.name(), extra.before(), known, findings);
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

    /** At the last of the extra steps whose name is taken. */
    private static void sameName(List<String> known, List<SewingTerms.Extra> extras, Findings findings) {
        for (int i = extras.size() - 1; i >= 0; i--) {
            if (Collections.frequency(known, extras.get(i).name()) > 1) {
                findings.add(key(i, "name"), Tell.said("wrong.same-name"), Tell.said("right.same-name"));
                return;
            }
        }
    }

    /** Told of the first name that is not there. */
    private static void noSuchStep(String key, String step, List<String> named, List<String> known, Findings findings) {
        named.stream()
                .filter(n -> !known.contains(n))
                .findFirst()
                .ifPresent(n -> findings.add(
                        key,
                        Tell.said("wrong.no-such-step", Part.text(step), Part.text(n)),
                        Tell.said("right.no-such-step", Part.listed(Part.Join.COMMA, words(known)))));
    }

    private static String key(int extra, String name) {
        return KEY + "." + (extra + 1) + "." + name;
    }

    private static List<Part.Text> words(List<String> names) {
        return names.stream().map(Part::text).toList();
    }
}
