package stretchwright.body;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;

/**
 * How to take one measure by hand. The words stand in guide.txt, the tolerance in {@link HandMeasuring}.
 *
 * @param iso its term in ISO 8559-1; empty where there is none
 * @param wrong what goes wrong
 * @param alone how one person takes it
 * @param aloneTolerance mm by which two readings taken alone may differ
 */
public record MeasureGuide(
        Measure measure, Optional<String> iso, String how, String wrong, String alone, double aloneTolerance) {

    private static final Map<Measure, MeasureGuide> ALL = read();

    public static MeasureGuide of(Measure measure) {
        MeasureGuide guide = ALL.get(measure);
        if (guide == null) {
            throw new IllegalStateException("the guide lacks " + measure.term());
        }
        return guide;
    }

    /** Mm by which two careful readings, taken with a helper, may differ. */
    public double tolerance() {
        return HandMeasuring.repeatLimit(measure);
    }

    /** Whether a helper makes it surer. */
    public boolean helperBetter() {
        return aloneTolerance > tolerance();
    }

    /** The whole guide, as docs/measuring.md. */
    public static String text(Voice voice) {
        StringBuilder out = new StringBuilder(lines("guide-start.txt"));
        for (Measure measure : Measure.values()) {
            out.append('\n').append(of(measure).section(voice));
        }
        return out.toString();
    }

    /** File name of its own drawing. */
    public String picture() {
        return measure.term().replace(' ', '-') + ".svg";
    }

    private String section(Voice voice) {
        Part within = Part.length(tolerance()).atMost();
        return "## " + measure.term() + "\n\n"
                + "![" + voice.say(Tell.said("guide.picture", measure.said())) + "](pictures/measures/" + picture()
                + ")\n\n"
                + line(voice, Tell.said("guide.how", Part.text(how)))
                + line(voice, Tell.said("guide.wrong", Part.text(wrong)))
                + line(
                        voice,
                        helperBetter()
                                ? Tell.said("guide.better-with-helper", Part.text(alone))
                                : Tell.said("guide.alone", Part.text(alone)))
                + line(
                        voice,
                        helperBetter()
                                ? Tell.said(
                                        "guide.tolerance-alone",
                                        within,
                                        Part.length(aloneTolerance).atMost())
                                : Tell.said("guide.tolerance", within))
                + line(
                        voice,
                        iso.map(term -> Tell.said("guide.iso", Part.text(term))).orElse(Tell.said("guide.no-iso")));
    }

    private static String line(Voice voice, Said said) {
        return "- " + voice.say(said) + "\n";
    }

    private static Map<Measure, MeasureGuide> read() {
        Map<Measure, MeasureGuide> all = new EnumMap<>(Measure.class);
        for (String block : lines("guide.txt").split("\n\n")) {
            Map<String, String> parts = new HashMap<>();
            for (String line : block.lines().filter(l -> !l.startsWith("#")).toList()) {
                String[] part = line.split(": ", 2);
                parts.put(part[0], part[1].strip());
            }
            if (!parts.isEmpty()) {
                MeasureGuide guide = of(parts);
                all.put(guide.measure, guide);
            }
        }
        return all;
    }

    private static MeasureGuide of(Map<String, String> parts) {
        for (String key : List.of("measure", "iso", "how", "wrong", "alone", "alone mm")) {
            if (!parts.containsKey(key)) {
                throw new IllegalStateException("the guide lacks \"" + key + "\" in " + parts);
            }
        }
        return new MeasureGuide(
                Measure.of(parts.getOrDefault("measure", "")).orElseThrow(),
                Optional.of(parts.getOrDefault("iso", "")).filter(t -> !t.equals("none")),
                parts.getOrDefault("how", ""),
                parts.getOrDefault("wrong", ""),
                parts.getOrDefault("alone", ""),
                Double.parseDouble(parts.getOrDefault("alone mm", "")));
    }

    /** In the program's language ("guide_de.txt") where there is such a file. */
    private static String lines(String resource) {
        String own = resource.replace(".txt", "_" + Voice.tag() + ".txt");
        try (InputStream in = Stream.of(own, resource)
                .map(MeasureGuide.class::getResourceAsStream)
                .filter(Objects::nonNull)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the program lacks its " + resource))) {
            return String.join(
                            "\n",
                            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                                    .lines()
                                    .toList())
                    + "\n";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
