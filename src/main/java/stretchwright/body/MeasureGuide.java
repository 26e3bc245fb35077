package stretchwright.body;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.TextFile;
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

    private static final List<String> PARTS = List.of("measure", "iso", "how", "wrong", "alone", "alone mm");

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
        StringBuilder out = new StringBuilder(TextFile.text(MeasureGuide.class, "guide-start.txt"));
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
        TextFile.blocks(MeasureGuide.class, "guide.txt", PARTS).stream()
                .map(MeasureGuide::of)
                .forEach(guide -> all.put(guide.measure, guide));
        return all;
    }

    private static MeasureGuide of(Map<String, String> parts) {
        return new MeasureGuide(
                Measure.of(parts.getOrDefault("measure", "")).orElseThrow(),
                Optional.of(parts.getOrDefault("iso", "")).filter(t -> !t.equals("none")),
                parts.getOrDefault("how", ""),
                parts.getOrDefault("wrong", ""),
                parts.getOrDefault("alone", ""),
                Double.parseDouble(parts.getOrDefault("alone mm", "")));
    }
}
