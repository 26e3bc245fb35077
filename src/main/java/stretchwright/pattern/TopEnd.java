package stretchwright.pattern;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How the leggings end above.
 *
 * @param dropBelowWaist how far below the waist the legs' top edge (where the band is joined) sits, mm
 * @param frontRaise how much higher than usual the top edge stands at centre front, mm; negative: lower
 * @param backRaise the same at centre back
 * @param band the waistband
 * @param back how the surplus of the hip over the waist is taken in at the back
 */
public record TopEnd(double dropBelowWaist, double frontRaise, double backRaise, Band band, BackShape back) {
    /**
     * @param height finished height, mm
     * @param elastic width of an elastic inside, mm; needed for a casing
     * @param drawstring a cord through the band; never for a child
     * @param keyPocket width of a key pocket inside the band, mm
     * @param elasticAsNeeded whether the draft may put an elastic in, where the band alone would not stay up
     */
    public record Band(
            Shape shape,
            double height,
            OptionalDouble elastic,
            boolean drawstring,
            OptionalDouble keyPocket,
            boolean elasticAsNeeded) {
        /** With this elastic or none. */
        public Band(Shape shape, double height, OptionalDouble elastic, boolean drawstring, OptionalDouble keyPocket) {
            this(shape, height, elastic, drawstring, keyPocket, false);
        }

        public enum Shape {
            /** A folded rectangle. */
            STRAIGHT,
            /** Two layers of the developed frustum between the waist and its lower edge. */
            CONTOURED,
            /** The legs' own top turned down over an elastic. */
            CASING
        }

        /** A casing is this much higher than its elastic, mm: 1/8 in (trade values section 5, [S25]). */
        public static final double CASING_ROOM = 3.2;

        /** Height of the channel for a cord where there is no elastic, mm (common practice, no source). */
        public static final double CORD_CHANNEL = 15;

        /** Widths that waist elastics are sold in, mm (common practice, no source). */
        public static final List<Double> ELASTICS = List.of(10.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0);

        /** A key stands out of a pocket that is less deep, mm (common practice, no source). */
        public static final double LEAST_POCKET = 40;

        /** Between a key pocket's opening and what is above it in the band, mm (common practice, no source). */
        public static final double POCKET_ROOM = 10;

        public static Band straight(double height) {
            return new Band(Shape.STRAIGHT, height, OptionalDouble.empty(), false, OptionalDouble.empty());
        }

        /** The legs' own top over an elastic of this width. */
        public static Band casing(double elastic) {
            return new Band(
                    Shape.CASING, elastic + CASING_ROOM, OptionalDouble.of(elastic), false, OptionalDouble.empty());
        }

        /** The same, in another shape. */
        public Band shaped(Shape other) {
            return new Band(other, height, elastic, drawstring, keyPocket, elasticAsNeeded && other == Shape.STRAIGHT);
        }

        public Band withElastic(double width) {
            return new Band(shape, height, OptionalDouble.of(width), drawstring, keyPocket);
        }

        public Band withCord() {
            return new Band(shape, height, elastic, true, keyPocket);
        }

        public Band withKeyPocket(double width) {
            return new Band(shape, height, elastic, drawstring, OptionalDouble.of(width), elasticAsNeeded);
        }

        /** A straight band into which the draft may put an elastic. */
        public Band elasticAsNeeded(boolean may) {
            return new Band(shape, height, elastic, drawstring, keyPocket, may);
        }

        public Band high(double other) {
            return new Band(shape, other, elastic, drawstring, keyPocket, elasticAsNeeded);
        }

        /** Finished depth of a key pocket: the band's height less what is above its opening, mm. */
        public double pocketDepth() {
            return height - channel() - POCKET_ROOM;
        }

        /** Whether an elastic of that width has room, and a key pocket below it still holds a key. */
        public boolean hasRoomFor(double width) {
            Band filled = withElastic(width);
            return filled.channel() <= height && (keyPocket.isEmpty() || filled.pocketDepth() >= LEAST_POCKET);
        }

        /** Height inside the band that an elastic or a cord takes up, from the fold down, mm; 0 without either. */
        public double channel() {
            if (shape == Shape.CASING) {
                return height;
            }
            return elastic.isPresent() ? elastic.getAsDouble() + CASING_ROOM : drawstring ? CORD_CHANNEL : 0;
        }
    }

    public enum BackShape {
        /** What the slanted centre seams leave, the band takes in. */
        PLAIN,
        /** One dart in each half of the back. */
        DARTS,
        /** The centre back seam takes in more and curves. */
        SHAPED_SEAM
    }

    /** At the waist, under a straight folded band. */
    public static TopEnd band(double height) {
        return new TopEnd(0, 0, 0, Band.straight(height), BackShape.PLAIN);
    }

    public TopEnd with(Band other) {
        return new TopEnd(dropBelowWaist, frontRaise, backRaise, other, back);
    }

    public TopEnd with(BackShape other) {
        return new TopEnd(dropBelowWaist, frontRaise, backRaise, band, other);
    }

    /** With a contoured band, joined below the waist; empty where it is no straight one, or has an elastic or a cord. */
    public Optional<TopEnd> contoured() {
        if (band.shape() != Band.Shape.STRAIGHT || band.elastic().isPresent() || band.drawstring()) {
            return Optional.empty();
        }
        double drop = dropBelowWaist == 0 ? band.height() : dropBelowWaist;
        return Optional.of(with(band.shaped(Band.Shape.CONTOURED)).dropped(drop));
    }

    /** The top edge so much higher in front and behind, mm; negative: lower. */
    public TopEnd raised(double front, double behind) {
        return new TopEnd(dropBelowWaist, front, behind, band, back);
    }

    /** The same, its top edge so far below the waist. */
    public TopEnd dropped(double mm) {
        return new TopEnd(mm, frontRaise, backRaise, band, back);
    }
}
