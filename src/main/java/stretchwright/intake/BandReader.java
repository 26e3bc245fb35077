package stretchwright.intake;

import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.body.Figure;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.TopEnd;
import stretchwright.pattern.TopEnd.Band.Shape;

/** The waistband from what was given; what contradicts itself is a finding that names both and what would reconcile them. */
final class BandReader {
    /** A casing higher than this beyond its elastic lets it turn over, mm (makers' troubles: elastic + 3; no source for 10). */
    private static final double LOOSEST_CASING = 10;

    /** What a tape in sixteenths cannot tell, mm. */
    private static final double TAPE = 0.3;

    /** EN 14682 covers cords in clothing of children up to 14 years. */
    private static final int CHILD_UNTIL = 14;

    /** A common width of waist elastic, mm. */
    private static final double ELASTIC = 25;

    private final Given given;
    private final Optional<WearerReader.Wearer> wearer;
    private final double drop;

    BandReader(Given given, Optional<WearerReader.Wearer> wearer, double drop) {
        this.given = given;
        this.wearer = wearer;
        this.drop = drop;
    }

    TopEnd.Band read() {
        Shape shape = given.orUsual(TopKeys.SHAPE);
        OptionalDouble elastic = given.get(TopKeys.ELASTIC).orElse(OptionalDouble.empty());
        double usual = shape == Shape.CASING && elastic.isPresent()
                ? elastic.getAsDouble() + TopEnd.Band.CASING_ROOM
                : TopKeys.USUAL_BAND;
        TopEnd.Band band = new TopEnd.Band(
                shape,
                given.get(TopKeys.BAND_HEIGHT).orElse(usual),
                elastic,
                given.orUsual(TopKeys.DRAWSTRING),
                Row.unboxed(given.get(TopKeys.KEY_POCKET)));
        boolean asNeeded = shape == Shape.STRAIGHT && given.get(TopKeys.ELASTIC).isEmpty() && !band.drawstring();
        band = band.elasticAsNeeded(asNeeded);
        switch (shape) {
            case STRAIGHT -> folded(band);
            case CONTOURED -> contoured(band);
            case CASING -> casing(band);
        }
        cord(band);
        keyPocket(band);
        return band;
    }

    /** The key of what lies inside the band. */
    private static Key<?> inside(TopEnd.Band band) {
        return band.elastic().isPresent() ? TopKeys.ELASTIC : TopKeys.DRAWSTRING;
    }

    private void folded(TopEnd.Band band) {
        if (band.channel() > band.height()) {
            given.add(
                    inside(band),
                    Tell.said("band.channel", Part.written(band.channel()), Part.written(band.height())),
                    Tell.said("band.higher"));
        }
    }

    private void contoured(TopEnd.Band band) {
        if (drop == 0) {
            given.add(
                    TopKeys.SHAPE,
                    Tell.said("band.contoured-rise"),
                    Tell.said("band.lower", Part.written(band.height())));
        }
        if (band.elastic().isPresent() || band.drawstring()) {
            given.add(inside(band), Tell.said("band.contoured-inside"), Tell.said("band.other-shape"));
        }
    }

    private void casing(TopEnd.Band band) {
        if (band.elastic().isEmpty()) {
            given.add(TopKeys.SHAPE, Tell.said("band.casing-empty"), Tell.said("band.elastic", Part.written(ELASTIC)));
            return;
        }
        double elastic = band.elastic().getAsDouble();
        double room = elastic + TopEnd.Band.CASING_ROOM;
        if (band.height() < room - TAPE || band.height() > elastic + LOOSEST_CASING) {
            given.add(
                    TopKeys.BAND_HEIGHT,
                    Tell.said(
                            "band.casing",
                            Part.written(band.height()),
                            Part.written(elastic),
                            whatHappens(band.height(), elastic)),
                    Tell.said("band.casing-height", Part.written(room)));
        }
    }

    private static Said whatHappens(double height, double elastic) {
        return height < elastic
                ? Tell.said("band.not-in")
                : height > elastic + LOOSEST_CASING ? Tell.said("band.turns") : Tell.said("band.jams");
    }

    /** No cord for a child, whatever the garment is for: simpler than to judge which rule covers it. */
    private void cord(TopEnd.Band band) {
        boolean child = wearer.map(WearerReader.Wearer::measured)
                .map(m -> m.figure() == Figure.CHILD
                        || (m.age().isPresent() && m.age().getAsDouble() < CHILD_UNTIL + 1))
                .orElse(false);
        if (band.drawstring() && child) {
            given.add(TopKeys.DRAWSTRING, Tell.said("cord.child"), Tell.said("cord.elastic", Part.written(ELASTIC)));
        }
    }

    private void keyPocket(TopEnd.Band band) {
        if (band.keyPocket().isEmpty()) {
            return;
        }
        if (band.shape() == Shape.CASING) {
            given.add(TopKeys.KEY_POCKET, Tell.said("key-pocket.casing"), Tell.said("key-pocket.shape"));
        } else if (band.pocketDepth() < TopEnd.Band.LEAST_POCKET) {
            given.add(
                    TopKeys.KEY_POCKET,
                    shallow(band),
                    Tell.said(
                            "key-pocket.higher",
                            Part.written(TopEnd.Band.LEAST_POCKET + band.height() - band.pocketDepth())));
        }
    }

    /** What else in the band takes up height. */
    private static Said shallow(TopEnd.Band band) {
        Part deep = Part.written(Math.max(0, band.pocketDepth()));
        Part height = Part.written(band.height());
        if (band.elastic().isPresent()) {
            return Tell.said(
                    "key-pocket.below-elastic",
                    deep,
                    height,
                    Part.written(band.elastic().getAsDouble()));
        }
        return band.drawstring()
                ? Tell.said("key-pocket.below-cord", deep, height)
                : Tell.said("key-pocket.shallow", deep, height);
    }
}
