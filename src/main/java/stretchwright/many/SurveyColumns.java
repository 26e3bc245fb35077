package stretchwright.many;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import stretchwright.body.Measure;

/**
 * Recognises the tables of public body surveys by their header and renames its columns to our terms. The mapping is data:
 * survey-columns.txt beside this class's resources.
 */
final class SurveyColumns {
    static final String SEX = "sex";
    static final String AGE = "age_years";

    /** The youngest of the Army surveys' adults are 17; who is younger is asked of the survey of children. */
    static final double ADULT = 17;

    private static final List<String> LINES = lines();

    private SurveyColumns() {}

    /** A table with a sex and no figure is one of a survey. */
    static boolean is(List<String> header) {
        return header.contains(SEX) && !header.contains("figure");
    }

    /** The header in our words; an empty word for a column that is not used. */
    static List<String> inOurWords(List<String> header) {
        List<String> words = new ArrayList<>();
        header.forEach(column -> words.add(""));
        words.set(header.indexOf(SEX), "figure");
        if (header.contains(AGE)) {
            words.set(header.indexOf(AGE), "age");
        }
        for (String line : LINES) {
            String[] parts = line.split("; *");
            for (int i = 1; i < parts.length; i++) {
                int at = header.indexOf(parts[i]);
                if (at >= 0) {
                    words.set(at, parts[0]);
                    break;
                }
            }
        }
        return List.copyOf(words);
    }

    static boolean hasMeasure(List<String> words) {
        return words.stream().anyMatch(w -> Measure.of(w).isPresent());
    }

    private static List<String> lines() {
        String name = "/stretchwright/many/survey-columns.txt";
        try (InputStream in = Objects.requireNonNull(SurveyColumns.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(l -> !l.isBlank() && !l.startsWith("#"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
