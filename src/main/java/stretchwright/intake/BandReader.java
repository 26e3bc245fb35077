package stretchwright.intake;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.body.Figure;
import stretchwright.pattern.TopEnd;
import stretchwright.pattern.TopEnd.Band.Shape;

/** Reads the waistband; what contradicts itself is a finding that names both and what would reconcile them. */
public final class BandReader {
    private static final List<String> KEYS = List.of("shape", "height", "elastic", "drawstring", "key pocket");

    /** A casing higher than this beyond its elastic lets it turn over, mm (makers' troubles: elastic + 3; no source for 10). */
    private static final double LOOSEST_CASING = 10;

    /** A key stands out of a pocket that is less deep, mm (common practice, no source). */
    private static final double LEAST_POCKET = 40;

    /** EN 14682 covers cords in clothing of children up to 14 years. */
    private static final int CHILD_UNTIL = 14;

    private final Section s;
    private final Section style;
    private final Optional<WearerReader.Wearer> wearer;
    private final double drop;

    private BandReader(Section band, Section style, Optional<WearerReader.Wearer> wearer, double drop) {
        this.s = band;
        this.style = style;
        this.wearer = wearer;
        this.drop = drop;
    }

    static TopEnd.Band read(Section style, Optional<WearerReader.Wearer> wearer, double drop) {
        return style.section("waistband", KEYS)
                .map(s -> new BandReader(s, style, wearer, drop).read())
                .orElse(TopEnd.Band.straight(Limits.USUAL_BAND));
    }

    private TopEnd.Band read() {
        Shape shape =
                s.choice("shape", List.of(Shape.values()), BandReader::word).orElse(Shape.STRAIGHT);
        OptionalDouble elastic = elastic();
        OptionalDouble given = s.length("height", Limits.BAND_HEIGHT);
        double usual = shape == Shape.CASING && elastic.isPresent()
                ? elastic.getAsDouble() + TopEnd.Band.CASING_ROOM
                : Limits.USUAL_BAND;
        TopEnd.Band band = new TopEnd.Band(
                shape,
                given.orElse(usual),
                elastic,
                s.yes("drawstring").orElse(false),
                s.length("key pocket", Limits.KEY_POCKET));
        switch (shape) {
            case STRAIGHT -> folded(band);
            case CONTOURED -> contoured(band);
            case CASING -> casing(band);
        }
        cord(band);
        keyPocket(band);
        return band;
    }

    public static String word(Shape shape) {
        return shape.name().toLowerCase(java.util.Locale.ROOT);
    }

    private OptionalDouble elastic() {
        Optional<String> text = s.text("elastic");
        return text.isEmpty() || text.get().equals("none")
                ? OptionalDouble.empty()
                : s.length("elastic", Limits.ELASTIC);
    }

    private void folded(TopEnd.Band band) {
        if (band.channel() > band.height()) {
            s.add(
                    band.elastic().isPresent() ? "elastic" : "drawstring",
                    "takes " + s.shownLength(band.channel()) + " inside a band of " + s.shownLength(band.height())
                            + ".",
                    "Make the band higher (height), or what lies in it narrower.");
        }
    }

    private void contoured(TopEnd.Band band) {
        if (drop == 0) {
            s.add(
                    "shape",
                    "\"contoured\" is at odds with rise: waist: above the waist nothing is measured that the band could"
                            + " follow.",
                    "Lower the rise (rise: " + style.shownLength(band.height())
                            + " lets the band end at the waist), or choose shape: straight.");
        }
        if (band.elastic().isPresent() || band.drawstring()) {
            s.add(
                    band.elastic().isPresent() ? "elastic" : "drawstring",
                    "is at odds with shape: contoured, which holds by its own shape; along its curved edge nothing straight"
                            + " lies flat.",
                    "Leave it out, or choose shape: straight or shape: casing.");
        }
    }

    private void casing(TopEnd.Band band) {
        if (band.elastic().isEmpty()) {
            s.add(
                    "shape",
                    "\"casing\" needs an elastic, and none is given.",
                    "Write its width, for example elastic: " + s.shownLength(25) + ".");
            return;
        }
        double elastic = band.elastic().getAsDouble();
        if (band.height() < elastic + TopEnd.Band.CASING_ROOM - 0.3 || band.height() > elastic + LOOSEST_CASING) {
            s.add(
                    "height",
                    "a casing of " + s.shownLength(band.height()) + " does not go with an elastic of "
                            + s.shownLength(elastic) + ": it would "
                            + (band.height() < elastic
                                    ? "not go in."
                                    : band.height() > elastic + LOOSEST_CASING ? "turn over." : "jam."),
                    "Leave height out: the casing is then " + s.shownLength(elastic + TopEnd.Band.CASING_ROOM) + ".");
        }
    }

    /** No cord for a child, whatever the garment is for: simpler than to judge which rule covers it. */
    private void cord(TopEnd.Band band) {
        boolean child = wearer.map(WearerReader.Wearer::measured)
                .map(m -> m.figure() == Figure.CHILD
                        || (m.age().isPresent() && m.age().getAsDouble() < CHILD_UNTIL + 1))
                .orElse(false);
        if (band.drawstring() && child) {
            s.add(
                    "drawstring",
                    "is at odds with a wearer who is a child: a cord at the waist can catch and hold a child fast (EN 14682;"
                            + " local rules come first).",
                    "Leave it out; an elastic holds as well: elastic: " + s.shownLength(25) + ".");
        }
    }

    /** What else in the band takes up height. */
    private String beside(TopEnd.Band band) {
        if (band.elastic().isPresent()) {
            return " below an elastic of " + s.shownLength(band.elastic().getAsDouble());
        }
        return band.drawstring() ? " below the channel of the cord" : "";
    }

    private void keyPocket(TopEnd.Band band) {
        if (band.keyPocket().isEmpty()) {
            return;
        }
        if (band.shape() == Shape.CASING) {
            s.add(
                    "key pocket",
                    "is at odds with shape: casing, which has no inner layer to carry it.",
                    "Leave it out, or choose shape: straight or contoured.");
        } else if (band.pocketDepth() < LEAST_POCKET) {
            s.add(
                    "key pocket",
                    "would be only " + s.shownLength(Math.max(0, band.pocketDepth())) + " deep in a band of "
                            + s.shownLength(band.height()) + beside(band) + ": a key falls out.",
                    "Make the band "
                            + s.shownLength(LEAST_POCKET + band.height() - band.pocketDepth())
                            + " high or more, or leave the pocket out.");
        }
    }
}
