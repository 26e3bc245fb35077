package stretchwright.many;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stretchwright.body.Measure;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.intake.FileKeys;
import stretchwright.intake.Key;
import stretchwright.intake.Nearest;
import stretchwright.intake.WearerKeys;

/**
 * The header of a table of bodies in our terms: columns are the keys of the wearer and the unit, with the everyday words
 * of the table of keys. A word that is no column is answered as an unknown key is.
 */
final class BodyColumns {
    static final String FIGURE = WearerKeys.FIGURE.name();

    private static final List<Key<?>> COLUMNS = Stream.concat(
                    Stream.of(WearerKeys.NAME, WearerKeys.FIGURE, WearerKeys.AGE, FileKeys.UNIT),
                    Arrays.stream(Measure.values()).map(WearerKeys::measure))
            .<Key<?>>map(k -> k)
            .toList();

    private final Findings findings;
    private String listed = "";

    private BodyColumns(Findings findings) {
        this.findings = findings;
    }

    /** Column by column its term; findings where a word means none, or two mean the same. */
    static List<String> terms(List<String> header, Findings findings) {
        return new BodyColumns(findings).terms(header);
    }

    /** Where findings about the header stand. */
    static String place() {
        return Voice.plain().say(Tell.said("at.header"));
    }

    private List<String> terms(List<String> header) {
        List<String> terms = new ArrayList<>();
        Map<String, String> seen = new LinkedHashMap<>();
        for (String word : header) {
            Optional<String> term =
                    COLUMNS.stream().filter(k -> k.isCalled(word)).findFirst().map(Key::name);
            terms.add(term.orElse(""));
            if (term.isEmpty()) {
                add(Tell.said("column.unknown", Tell.quoted(word)), remedy(word));
            } else {
                String before = seen.putIfAbsent(term.get(), word);
                if (before != null) {
                    add(twice(word, before), Tell.said("column.keep-one"));
                }
            }
        }
        if (!seen.containsKey(FIGURE)) {
            add(Tell.said("column.no-figure"), Tell.said("column.figure"));
        }
        return terms;
    }

    private static Said twice(String word, String before) {
        return word.equals(before)
                ? Tell.said("column.twice", Tell.quoted(word))
                : Tell.said("column.same", Tell.quoted(word), Tell.quoted(before));
    }

    private Said remedy(String word) {
        List<String> known = COLUMNS.stream()
                .flatMap(k -> Stream.concat(Stream.of(k.name()), k.synonyms().stream()))
                .toList();
        Optional<String> near = Nearest.to(word, known);
        if (near.isPresent()) {
            return Tell.said("column.meant", Part.text(near.get()));
        }
        if (!listed.isEmpty()) {
            return Tell.said("column.listed", Tell.quoted(listed));
        }
        listed = word;
        return Tell.said(
                "column.known", Tell.words(COLUMNS.stream().map(Key::name).toList()));
    }

    private void add(Said wrong, Said right) {
        findings.add(place(), wrong, right);
    }
}
