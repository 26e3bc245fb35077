package stretchwright.print.cards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.MeanBody;
import stretchwright.body.Measure;
import stretchwright.body.MeasureGuide;
import stretchwright.body.Value;
import stretchwright.ground.Document;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.many.BodyCheck;

/**
 * docs/measuring.md and its pictures are what the program's data say; those of the boot are held by BootPicturesTest. After a change of the data write them anew: the
 * same test with -Dstretchwright.write=docs.
 */
class MeasuringDocTest {
    private static final Path TEXT = Path.of("docs/measuring.md");
    private static final Path PICTURE = Path.of("docs/pictures/measures.svg");

    private static final Path PICTURES = Path.of("docs/pictures/measures");

    /** Values given, so that the picture of how to measure carries no marks of estimates. */
    private static Body meanWoman() {
        Map<Measure, Value> values = new EnumMap<>(Measure.class);
        MeanBody.of(Figure.WOMAN)
                .values()
                .forEach((m, v) -> values.put(m, new Value(v.mm(), Value.Origin.GIVEN, v.spread())));
        return new Body(Figure.WOMAN, OptionalDouble.empty(), values);
    }

    private static String picture() {
        return new String(BodySvg.of(meanWoman(), "the mean woman", Unit.CM).bytes(), StandardCharsets.UTF_8);
    }

    @Test
    void textAndPictureAreThoseOfTheData() throws IOException {
        if ("docs".equals(System.getProperty("stretchwright.write"))) {
            Files.writeString(TEXT, BodyCheck.guide());
            Files.writeString(PICTURE, picture());
        }
        assertThat(Files.readString(TEXT)).isEqualTo(BodyCheck.guide());
        assertThat(Files.readString(PICTURE)).isEqualTo(picture());
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void everyMeasureHasItsOwnPicture(Measure measure) throws IOException {
        Document drawing = MeasureSvg.of(meanWoman(), measure);
        Path file = PICTURES.resolve(drawing.name());
        if ("docs".equals(System.getProperty("stretchwright.write"))) {
            Files.createDirectories(PICTURES);
            Files.write(file, drawing.bytes());
        }
        assertThat(Files.readAllBytes(file)).isEqualTo(drawing.bytes());
        assertThat(Files.readString(file)).contains("class=\"cut-line\"");
        assertThat(MeasureGuide.text(Voice.plain())).contains("pictures/measures/" + drawing.name());
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void everyMeasureIsTold(Measure measure) {
        MeasureGuide guide = MeasureGuide.of(measure);
        assertThat(guide.how()).endsWith(guide.how().endsWith(")") ? ")" : ".");
        assertThat(guide.wrong().length()).isGreaterThan(15);
        assertThat(guide.alone().length()).isGreaterThan(15);
        assertThat(guide.aloneTolerance()).isGreaterThanOrEqualTo(guide.tolerance());
        assertThat(picture()).contains(measure == Measure.BACK_CROTCH_LENGTH ? "of which back" : measure.term());
    }

    /** A circle by hand, and an ellipse of half axes 2 and 1: perimeter 9.68845 (tables of the complete integral). */
    @Test
    void halfBreadthsOfKnownEllipses() {
        assertThat(BodyOutline.halfBreadth(2 * Math.PI, 1)).isCloseTo(1, within(1e-12));
        assertThat(BodyOutline.halfBreadth(9.68845, 0.5)).isCloseTo(2, within(1e-4));
    }
}
